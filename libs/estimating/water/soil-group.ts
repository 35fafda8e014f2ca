import type { Known } from '#units/known.js';
import type { SoilGroup } from './curve-numbers.data.js';

/**
 * Hydrologic soil group by texture. Source: TR-55 appendix A, for soils whose profile was disturbed (from memory,
 * not read again). Fill and anything not listed has none: an infiltration test decides.
 */
const GROUPS: ReadonlyMap<string, SoilGroup> = new Map([
  ['sand', 'A'],
  ['sandy', 'A'],
  ['loamy sand', 'A'],
  ['sandy loam', 'A'],
  ['silt loam', 'B'],
  ['loam', 'B'],
  ['sandy clay loam', 'C'],
  ['clay loam', 'D'],
  ['silty clay loam', 'D'],
  ['sandy clay', 'D'],
  ['silty clay', 'D'],
  ['clay', 'D'],
]);

/** The group of a texture class, unknown where the texture is unknown or not listed. */
export function soilGroupOf(texture: Known<string>): Known<SoilGroup> {
  const group = texture.known ? GROUPS.get(texture.value.trim().toLowerCase()) : undefined;
  return group ? { known: true, value: group } : { known: false };
}
