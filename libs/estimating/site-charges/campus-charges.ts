import type { Campus } from '#domain/campus.js';
import { siteCharges, type SiteCharges } from './site-charges.js';

/** Charges of every candidate as each type it may become, worked out once. */
export interface CampusCharges {
  of(site: string, buildType: string): SiteCharges;
}

/** Works out charges on first use and keeps them. */
export function campusCharges(campus: Campus): CampusCharges {
  const sites = new Map([...campus.candidates, ...campus.existing].map((s) => [s.id, s]));
  const kept = new Map<string, SiteCharges>();
  return {
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
