import { COMPONENTS, type Component, type ComponentShares } from '#domain/component.js';
import { weightedCurveNumber } from './composite-curve-number.js';
import { type Cover, curveNumber, type SoilGroup } from './curve-numbers.data.js';

/**
 * Cover that stands for each component in runoff. TR-55 has no row for sheet-mulched beds: these are
 * assumptions (woods-grass for food and perennials, brush for woody, meadow, gravel for paths).
 */
export const COVER_OF_COMPONENT: Readonly<Record<Component, Cover>> = {
  'annual-bed': 'woods-grass, fair',
  'perennial-bed': 'woods-grass, good',
  woody: 'brush, good',
  'rain-garden': 'brush, good',
  meadow: 'meadow',
  path: 'gravel',
};

/** Area-weighted curve number of a site once it is planted and established, not rounded. */
export function plantedCurveNumber(shares: ComponentShares, soil: SoilGroup): number {
  return weightedCurveNumber(
    COMPONENTS.map((component) => ({
      area: shares[component],
      curveNumber: curveNumber(COVER_OF_COMPONENT[component], soil),
    })),
  );
}

/** Cover before conversion by the word used for it on a site walk; undefined for a word not listed. */
export function coverBefore(word: string): Cover | undefined {
  return COVERS_BEFORE.get(word.trim().toLowerCase());
}

const COVERS_BEFORE: ReadonlyMap<string, Cover> = new Map([
  ['mown turf', 'lawn, good (grass above 75 %)'],
  ['worn turf', 'lawn, fair (50 to 75 %)'],
  ['rough turf', 'lawn, fair (50 to 75 %)'],
  ['tired shrubs', 'brush, fair'],
  ['tired shrub bed', 'brush, fair'],
  ['bare', 'newly graded'],
  ['gravel', 'gravel'],
  ['pavement', 'paved, roof'],
]);
