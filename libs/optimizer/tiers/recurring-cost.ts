import { plannedYears, seasonInstance, yearIndexOf } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { gradeSupply } from '#domain/compost.js';
import { gradeOf, type Decisions } from '#domain/plan.js';
import { recurringSupplies } from '#estimating/plan-needs/money-needs.js';
import type { CampusCharges } from '#estimating/site-charges/campus-charges.js';
import { existingLife } from '#estimating/site-charges/life.js';

/**
 * What a plan adds every year, in cents of the price year: care supplies, positions held, compost
 * bought. Standing costs are left out, since no plan changes them. By year index.
 */
export function recurringCost(
  campus: Campus,
  decisions: Decisions,
  charges: CampusCharges,
): number[] {
  const years = new Array<number>(plannedYears(campus.calendar)).fill(0);
  const add = (year: number, amount: number) => (years[year] = (years[year] ?? 0) + amount);
  for (const site of campus.existing) {
    const part = {
      life: existingLife(campus, site),
      charges: charges.of(site.id, site.buildType),
    };
    recurringSupplies(campus, [part]).forEach((c, y) => add(y, c));
  }
  for (const placement of decisions.placements) {
    recurringSupplies(campus, charges.parts(placement)).forEach((c, y) => add(y, c));
  }
  for (const hire of decisions.hires) {
    const position = campus.positions.find((p) => p.id === hire.position);
    const start = yearIndexOf(campus.calendar, hire.year);
    const last = position?.term === 'recurring' ? years.length - 1 : start;
    for (let y = start; y <= last; y++) {
      add(y, hire.count * ((y === start ? position?.firstYearCost : position?.annualCost) ?? 0));
    }
  }
  for (const purchase of decisions.purchases) {
    const { pricePerYard } = gradeSupply(campus.compost, gradeOf(purchase));
    add(
      seasonInstance(campus.calendar, purchase.season).yearIndex,
      purchase.cubicYards * pricePerYard,
    );
  }
  return years;
}
