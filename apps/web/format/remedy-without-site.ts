import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { strings } from '../strings.data.js';

const { findOut, limits, noCandidate } = strings.next.remedies;

/** What to do in a year for which the plan holds no site. */
export function remedyWithoutSite({ totals, unknowns }: PlanOverview): string {
  if (totals.candidates === 0) return noCandidate;
  return unknowns.length > 0 ? findOut : limits;
}
