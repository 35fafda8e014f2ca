import type { Point, Shape } from '../document/drawing.js';
import { label, line, rect, THIN } from './shapes.js';

/** Height that the north arrow and scale bar take below a map, in points. */
export const FURNITURE_HEIGHT = 34;

/** A north arrow with its foot at a point; up is north. */
export function northArrow({ x, y }: Point): readonly Shape[] {
  const half = (side: -1 | 1, fill: 'none' | 'dark'): Shape => ({
    kind: 'polygon',
    points: [
      { x, y: y - 20 },
      { x: x + side * 5, y },
      { x, y: y - 4 },
    ],
    fill,
    stroke: THIN,
  });
  return [
    half(-1, 'dark'),
    half(1, 'none'),
    label({ x: x + 8, y: y - 12 }, 'N', { weight: 'bold' }),
  ];
}

/** A scale bar of two equal parts, of a round length near a fourth of the map's width. */
export function scaleBar(at: Point, scale: number, mapWidth: number): readonly Shape[] {
  const feet = roundLength(mapWidth / 4 / scale);
  const half = (feet / 2) * scale;
  const bar = (x: number, fill: 'none' | 'dark') =>
    rect({ x, y: at.y, width: half, height: 4 }, fill, THIN);
  const words = (x: number, text: string) => label({ x, y: at.y - 4 }, text, { anchor: 'middle' });
  return [
    bar(at.x, 'dark'),
    bar(at.x + half, 'none'),
    words(at.x, '0'),
    words(at.x + half, (feet / 2).toLocaleString('en-US')),
    words(at.x + 2 * half, `${feet.toLocaleString('en-US')} ft`),
    line({ x: at.x, y: at.y }, { x: at.x, y: at.y - 2 }, THIN),
  ];
}

/** The greatest of 1, 2 or 5 times a power of ten that is not above the given length. */
export function roundLength(length: number): number {
  const power = 10 ** Math.floor(Math.log10(length));
  const factor = [5, 2, 1].find((step) => step * power <= length * (1 + 1e-9)) ?? 1;
  return factor * power;
}
