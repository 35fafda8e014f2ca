import { canonicalJson } from '#contracts/canonical.js';
import type { ImportChange } from '#contracts/http/imports.js';
import { rightHanded, type Rings } from '../geojson/winding.js';

/** Puts a drawn boundary into a site, unless it is the same but for the direction of its rings; they run by the right hand then. */
export function mergeBoundary(draft: Record<string, unknown>, boundary: unknown): ImportChange[] {
  const before = draft['boundary'];
  if (before !== undefined && canonicalJson(wound(before)) === canonicalJson(wound(boundary))) {
    return [];
  }
  draft['boundary'] = { type: 'Polygon', coordinates: wound(boundary) };
  return [{ field: 'geometry', from: cornersOf(before), to: cornersOf(boundary) }];
}

function wound(boundary: unknown): unknown {
  return rightHanded((boundary as { coordinates: Rings }).coordinates);
}

function cornersOf(boundary: unknown): string {
  if (boundary === undefined) return '';
  const count = (boundary as { coordinates: Rings }).coordinates.flat().length;
  return `outline of ${count} positions`;
}
