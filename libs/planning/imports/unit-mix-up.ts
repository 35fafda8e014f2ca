import type { ProblemText } from '#domain/problem.js';
import type { Rings } from '#domain/site.js';
import { areaSqFt } from '#estimating/geometry/area.js';

const SQUARE_METERS_PER_SQUARE_FOOT = 0.3048 ** 2;

/** Units that an area may be in by mistake, and how many of each a square foot is. */
const MISTAKEN: readonly (readonly [unit: string, perSquareFoot: number])[] = [
  ['acres', 1 / 43_560],
  ['square meters', SQUARE_METERS_PER_SQUARE_FOOT],
  ['square yards', 1 / 9],
  ['hectares', SQUARE_METERS_PER_SQUARE_FOOT / 10_000],
];

/** Stated areas are rounded, the more so the larger the unit; no two units lie this near each other. */
const NEAR = 0.08;

/** Why a stated area is most likely in another unit than square feet; else undefined. */
export function unitMixUp(statedSqFt: number, boundary: Rings): ProblemText | undefined {
  const drawn = areaSqFt(boundary);
  const ratio = statedSqFt / drawn;
  const mistaken = MISTAKEN.find(([, factor]) => Math.abs(ratio / factor - 1) <= NEAR);
  if (mistaken === undefined) return undefined;
  const rounded = Math.round(drawn).toLocaleString('en-US');
  return [
    `The area of ${statedSqFt} is most likely in ${mistaken[0]}: the boundary holds ${rounded} square feet.`,
    `Give the area in square feet, about ${rounded}.`,
  ];
}
