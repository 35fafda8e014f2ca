import type { Campus } from '#domain/campus.js';
import { buildType, candidate } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import { lifetimePoints, pointsPerYear } from '#estimating/benefit-points/benefit-points.js';
import { lifeOf } from '#estimating/site-charges/life.js';
import { commitmentShortfall } from '#rules/commitment-shortfall.js';

/** Points of a plan: discounted points of its sites, and of the aspirations it serves. Thousandths. */
export function planBenefit(campus: Campus, plan: Plan): number {
  const sites = plan.decisions.placements.reduce((sum, { site, buildType: type, year }) => {
    const yearly = pointsPerYear(campus, candidate(campus, site), buildType(campus, type));
    return sum + lifetimePoints(campus, yearly, lifeOf(campus, site, year));
  }, 0);
  const aspirations = campus.commitments
    .filter((c) => c.strength === 'aspiration')
    .reduce((sum, c) => {
      const { amount, whole } = commitmentShortfall(campus, plan, c);
      const kept = whole > 0 ? Math.max(0, 1 - amount / whole) : amount > 0 ? 0 : 1;
      return sum + c.points * 1000 * kept;
    }, 0);
  return sites + aspirations;
}
