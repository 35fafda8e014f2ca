import type { Campus } from '#domain/campus.js';
import type { Decisions } from '#domain/plan.js';
import { careNeeds } from '#estimating/plan-needs/labor-needs.js';
import type { CampusCharges } from '#estimating/site-charges/campus-charges.js';
import { CARE_CLASSES, FINE_PARTS } from '#estimating/site-charges/type-profile.js';

/** The season in which a plan asks for most care: summer on most campuses. */
export interface BusySeason {
  readonly id: string;
  readonly order: number;
}

/** The season with most hours of care over all planned years; the earlier one of equals. */
export function busySeason(
  campus: Campus,
  decisions: Decisions,
  charges: CampusCharges,
): BusySeason {
  const { seasons } = campus.calendar;
  const hours = seasons.map(() => 0);
  careNeeds(campus, decisions, charges).forEach((fine, index) => {
    const order = index % seasons.length;
    hours[order] = (hours[order] ?? 0) + CARE_CLASSES.reduce((sum, c) => sum + fine[c], 0);
  });
  const order = hours.indexOf(Math.max(...hours));
  return { id: seasons[order]?.id ?? '', order };
}

/** Hours of care and harvest that a site asks for in one season at an age, in hours. */
export function careHoursAt(
  charges: CampusCharges,
  of: { readonly site: string; readonly buildType: string },
  at: { readonly age: number; readonly order: number },
): number {
  const { areaSqFt, profile } = charges.of(of.site, of.buildType);
  const perThousand = CARE_CLASSES.reduce((sum, c) => sum + profile.care(c, at.age, at.order), 0);
  return (areaSqFt * perThousand) / FINE_PARTS;
}
