import type { Position, Rings } from '#domain/site.js';
import { isClosed } from '#estimating/geometry/area.js';
import { inverse } from '#estimating/geometry/distance.js';
import { METERS_PER_FOOT } from '#estimating/geometry/units.js';

/** A point in feet on a plane about an origin: `x` to the east, `y` to the north. */
export interface FeetPoint {
  readonly x: number;
  readonly y: number;
}

/**
 * The outer ring of a polygon in feet about an origin, by distance and azimuth of the geodesic
 * (azimuthal equidistant). The last position is not repeated.
 */
export function feetRing(origin: Position, polygon: Rings): FeetPoint[] {
  const ring = polygon[0] ?? [];
  const positions = isClosed(ring) ? ring.slice(0, -1) : ring;
  return positions.map((position) => {
    const { meters, azimuth } = inverse(origin, position);
    const radians = (azimuth * Math.PI) / 180;
    const feet = meters / METERS_PER_FOOT;
    return { x: feet * Math.sin(radians), y: feet * Math.cos(radians) };
  });
}

/** Width (east to west) and height (north to south) of points, in feet. */
export function extentOf(points: readonly FeetPoint[]): { width: number; height: number } {
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  return {
    width: Math.max(...xs) - Math.min(...xs),
    height: Math.max(...ys) - Math.min(...ys),
  };
}
