import type { Campus } from '#domain/campus.js';
import { placementKey, type Placement } from '#domain/plan.js';
import { siteCharges, type SiteCharges } from './site-charges.js';
import { placedPartsOf, type PlacedPart } from './placed-parts.js';

/** Charges of every candidate as each type it may become, worked out once. */
export interface CampusCharges {
  of(site: string, buildType: string): SiteCharges;
  /** The pieces of a placed site, each with what it asks for. */
  parts(placement: Placement): readonly PlacedPart[];
}

/** Works out charges on first use and keeps them. */
export function campusCharges(campus: Campus): CampusCharges {
  const sites = new Map([...campus.candidates, ...campus.existing].map((s) => [s.id, s]));
  const kept = new Map<string, SiteCharges>();
  const keptParts = new Map<string, readonly PlacedPart[]>();
  return {
    parts(placement) {
      const key = placementKey(placement);
      const found = keptParts.get(key);
      if (found) return found;
      const made = placedPartsOf(campus, placement);
      keptParts.set(key, made);
      return made;
    },
    of(siteId, typeId) {
      const key = `${siteId}\u0000${typeId}`;
      const found = kept.get(key);
      if (found) return found;
      const site = sites.get(siteId);
      if (!site) throw new RangeError(`no site ${siteId} in ${campus.name}`);
      const charges = siteCharges(campus, site, typeId);
      kept.set(key, charges);
      return charges;
    },
  };
}
