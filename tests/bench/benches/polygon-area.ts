import turfArea from '@turf/area';
import type { Position } from '#domain/site.js';
import { areaSqFt } from '#estimating/geometry/area.js';
import type { Bench } from '../bench.js';

/** A site of about 8,500 sf in open ocean water, drawn with so many corners. */
function ring(corners: number): Position[] {
  const at = (turn: number): Position => [
    -140 + 0.000_18 * Math.cos(turn),
    30 + 0.000_14 * Math.sin(turn),
  ];
  const open = Array.from({ length: corners }, (_, corner) => at((2 * Math.PI * corner) / corners));
  return [...open, at(0)];
}

export const polygonArea: Bench = {
  name: 'polygon-area',
  about: 'area of a drawn site: on the ellipsoid (ours) against on a sphere (@turf/area)',
  sizeUnit: 'corners',
  sizes: [8, 64, 512],
  contenders: (corners) => {
    const drawn = ring(corners);
    const geometry = { type: 'Polygon' as const, coordinates: [drawn.map((p) => [...p])] };
    return [
      { name: 'ellipsoid', run: () => areaSqFt([drawn]) },
      { name: 'sphere', run: () => turfArea(geometry) },
    ];
  },
};
