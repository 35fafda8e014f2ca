import { seasonIndex, seasonInstance, yearIndexOf } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { ConstructionConflict } from '#domain/site.js';
import { cents, roundCents, type Cents } from '#units/cents.js';
import { worksAfter } from './life.js';
import type { PlacedPart } from './placed-parts.js';

/** Capital that works are expected to waste, and the works. */
export interface Stranded {
  readonly works: ConstructionConflict;
  /** In dollars of the price year. */
  readonly amount: Cents;
}

/**
 * What the first works after planting waste of each built piece of a site.
 *
 *     stranded = capital x (payback - years stood) / payback x certainty
 *
 * Nothing is stranded once the payback years are over, nor where the site was returned before.
 */
export function strandedOf(campus: Campus, parts: readonly PlacedPart[]): Stranded[] {
  return parts.flatMap(({ charges, life }) => {
    if (life.prepared === undefined) return [];
    const works = worksAfter({ campus, site: charges.site, planted: life.planted });
    if (!works || returnedBefore(campus, parts, works)) return [];
    const stood = works.from - seasonInstance(campus.calendar, life.planted).year;
    const unused = Math.max(0, campus.paybackYears - stood);
    if (unused === 0) return [];
    const share = (unused / campus.paybackYears) * (works.certaintyPercent / 100);
    return [{ works, amount: roundCents(charges.buildCost * share) }];
  });
}

function returnedBefore(
  { calendar }: Campus,
  parts: readonly PlacedPart[],
  works: ConstructionConflict,
): boolean {
  const start = seasonIndex(calendar, yearIndexOf(calendar, works.from), 0);
  return parts.some(({ share, life }) => share === 0 && life.planted < start);
}

/** Stranded cost of a placed site, in dollars of the price year. */
export function strandedCost(campus: Campus, parts: readonly PlacedPart[]): Cents {
  return cents(strandedOf(campus, parts).reduce((sum, { amount }) => sum + amount, 0));
}
