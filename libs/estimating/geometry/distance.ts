import geodesy from 'geographiclib-geodesic';

import type { Position } from '#domain/site.js';
import { METERS_PER_FOOT } from './units.js';

/** Feet along the geodesic between two positions on WGS 84 (Karney 2013, inverse problem). */
export function distanceFt(from: Position, to: Position): number {
  return inverse(from, to).meters / METERS_PER_FOOT;
}

/** Meters and azimuth (degrees clockwise from north at `from`) of the geodesic between two positions. */
export function inverse(from: Position, to: Position): { meters: number; azimuth: number } {
  const line = geodesy.Geodesic.WGS84.Inverse(from[1], from[0], to[1], to[0]);
  return { meters: line.s12 ?? 0, azimuth: line.azi1 ?? 0 };
}

/** The position reached from `from` by going `feet` along a geodesic that starts at `azimuth` degrees. */
export function positionAt(from: Position, azimuth: number, feet: number): Position {
  const line = geodesy.Geodesic.WGS84.Direct(from[1], from[0], azimuth, feet * METERS_PER_FOOT);
  return [line.lon2 ?? from[0], line.lat2 ?? from[1]];
}
