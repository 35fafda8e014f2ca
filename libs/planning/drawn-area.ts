import { polygonSchema } from '#contracts/campus-file/geometry.js';
import { areaSqFt, isClosed } from '#estimating/geometry/area.js';
import type { JsonDocument } from './json-document.js';

/** Square feet within the boundary of a site as it was given; null where none can be measured. */
export function drawnAreaOf(site: JsonDocument): number | null {
  const boundary = polygonSchema.safeParse(site['boundary']);
  if (!boundary.success || !boundary.data.coordinates.every(isClosed)) return null;
  return areaSqFt(boundary.data.coordinates);
}
