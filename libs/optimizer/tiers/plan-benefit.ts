import type { Campus } from '#domain/campus.js';
import { candidate } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import { placementPoints } from '#estimating/benefit-points/benefit-points.js';
import { placedPartsOf } from '#estimating/site-charges/placed-parts.js';
import { commitmentShortfall } from '#rules/commitment-shortfall.js';

/** Points of a plan: discounted points of its sites, and of the aspirations it serves. Thousandths. */
export function planBenefit(campus: Campus, plan: Plan): number {
  const sites = plan.decisions.placements.reduce(
    (sum, placement) =>
      sum +
      placementPoints(campus, candidate(campus, placement.site), placedPartsOf(campus, placement)),
    0,
  );
  return sites + aspirationPoints(campus, plan);
}

/** Points of all aspirations where they are served in full. Thousandths. */
export function mostAspirationPoints({ commitments }: Campus): number {
  return commitments.reduce(
    (sum, c) => (c.strength === 'aspiration' ? sum + c.points * 1000 : sum),
    0,
  );
}

/** Points of the aspirations that a plan serves, each by the share of it that is kept. Thousandths. */
export function aspirationPoints(campus: Campus, plan: Plan): number {
  return campus.commitments
    .filter((c) => c.strength === 'aspiration')
    .reduce((sum, c) => {
      const { amount, whole } = commitmentShortfall(campus, plan, c);
      const kept = whole > 0 ? Math.max(0, 1 - amount / whole) : amount > 0 ? 0 : 1;
      return sum + c.points * 1000 * kept;
    }, 0);
}
