import geodesy from 'geographiclib-geodesic';

import type { Position, Rings } from '#domain/site.js';
import { METERS_PER_FOOT, SQUARE_METERS_PER_SQUARE_FOOT } from './units.js';

/**
 * Area and perimeter of a ring whose edges are geodesics of the WGS 84 ellipsoid.
 * Area is positive counter-clockwise, negative clockwise.
 *
 * Source: C. F. F. Karney, Algorithms for geodesics, J. Geodesy 87 (2013), section 6, as in GeographicLib.
 */
export function ringMeasures(ring: readonly Position[]): { squareMeters: number; meters: number } {
  const polygon = geodesy.Geodesic.WGS84.Polygon(false);
  const last = ring.length - (isClosed(ring) ? 1 : 0);
  for (const [longitude, latitude] of ring.slice(0, last)) polygon.AddPoint(latitude, longitude);
  const { area, perimeter } = polygon.Compute(false, true);
  return { squareMeters: area ?? 0, meters: perimeter };
}

/** Square feet inside the outer ring less the holes, whatever way the rings wind. */
export function areaSqFt(polygon: Rings): number {
  const areas = polygon.map((ring) => Math.abs(ringMeasures(ring).squareMeters));
  const [outer = 0, ...holes] = areas;
  return (outer - holes.reduce((a, b) => a + b, 0)) / SQUARE_METERS_PER_SQUARE_FOOT;
}

/** Feet of edge: the outer ring and every hole, since each needs an edge on the ground. */
export function perimeterFt(polygon: Rings): number {
  return polygon.reduce((sum, ring) => sum + ringMeasures(ring).meters, 0) / METERS_PER_FOOT;
}

export function isClosed(ring: readonly Position[]): boolean {
  const first = ring[0];
  const last = ring[ring.length - 1];
  if (!first || !last || ring.length < 2) return false;
  return first[0] === last[0] && first[1] === last[1];
}
