import type { TaskClass } from '#domain/labor.js';
import type { SiteCharges } from '#estimating/site-charges/site-charges.js';
import {
  CARE_CLASSES,
  FINE_PARTS,
  SETTLED_AGE,
  type TypeProfile,
} from '#estimating/site-charges/type-profile.js';
import type { Columns } from '../columns.js';

/** The most hours that all sites together can ask for in a season of the year, by its order. */
export type SiteMost = (order: number, classes: ReadonlySet<TaskClass>) => number;

/** Each site counts once, at its heaviest age and type. */
export function siteMaxima(columns: Columns): SiteMost {
  const charges = new Set(
    columns.lifecycles.flatMap((l) => [l.charges, ...l.parts.map((part) => part.charges)]),
  );
  const kept = new Map<string, number>();
  return (order, classes) => {
    const key = `${order} ${[...classes].sort().join(' ')}`;
    const found = kept.get(key);
    if (found !== undefined) return found;
    const worst = new Map<string, number>();
    const care = new Map<TypeProfile, number>();
    for (const of of charges) {
      const heavy = care.get(of.profile) ?? heaviestCare(of.profile, order, classes);
      care.set(of.profile, heavy);
      worst.set(of.site, Math.max(worst.get(of.site) ?? 0, heaviest(of, classes, heavy)));
    }
    const most = [...worst.values()].reduce((a, b) => a + b, 0);
    kept.set(key, most);
    return most;
  };
}

/** Hours of one site and type at its heaviest age, `care` being the heaviest for each square foot. */
function heaviest(of: SiteCharges, classes: ReadonlySet<TaskClass>, care: number): number {
  const install =
    (classes.has('prepare') ? of.prepareHours : 0) + (classes.has('plant') ? of.plantHours : 0);
  return install / 100 + (care * of.areaSqFt) / FINE_PARTS;
}

function heaviestCare(
  profile: TypeProfile,
  order: number,
  classes: ReadonlySet<TaskClass>,
): number {
  let most = 0;
  for (let age = 1; age <= SETTLED_AGE; age++) {
    let fine = 0;
    for (const c of CARE_CLASSES) if (classes.has(c)) fine += profile.care(c, age, order);
    most = Math.max(most, fine);
  }
  return most;
}
