/** Sites and residents of a zone. */
export interface ZoneCount {
  readonly zone: string;
  readonly sites: number;
  readonly residents: number;
}

/** Sites per 1,000 residents of each zone; null where nobody lives, which is not zero. */
export function sitesPer1000(
  zones: readonly ZoneCount[],
): { zone: string; per1000: number | null }[] {
  return zones.map(({ zone, sites, residents }) => ({
    zone,
    per1000: residents > 0 ? (1000 * sites) / residents : null,
  }));
}

/**
 * Gini coefficient of sites over residents: 0 where every resident has the same, towards 1 where one zone has all.
 *
 *     sum over pairs r_i r_j |x_i - x_j| / (2 mean), x = sites per resident, r = share of residents
 */
export function gini(zones: readonly ZoneCount[]): number {
  const lived = zones.filter(({ residents }) => residents > 0);
  const people = lived.reduce((sum, zone) => sum + zone.residents, 0);
  const sites = lived.reduce((sum, zone) => sum + zone.sites, 0);
  if (sites === 0) return 0;
  let differences = 0;
  for (const one of lived) {
    for (const other of lived) {
      const apart = Math.abs(one.sites / one.residents - other.sites / other.residents);
      differences += (one.residents / people) * (other.residents / people) * apart;
    }
  }
  return differences / (2 * (sites / people));
}
