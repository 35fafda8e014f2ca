import { NO_DECISIONS, type Plan } from '#domain/plan.js';
import { commitmentShortfall } from '#rules/commitment-shortfall.js';
import { checkPrecedence } from '#rules/precedence/check.js';
import { mustHave } from '../construct/musts.js';
import { hiresOf, placementsOf, type SearchState } from '../search/state.js';
import { aspirationPoints, mostAspirationPoints } from '../tiers/plan-benefit.js';
import { tiersOf } from '../tiers/tier-list.js';

/** Values to be made small, in the order of the tiers: shortfalls, then benefit with its sign turned. */
export function searchValues(state: SearchState): number[] {
  return valuesOf(state, planSketch(state));
}

/** The values of a state; `undefined` where a binding promise is broken. */
export function judged(state: SearchState): number[] | undefined {
  const plan = planSketch(state);
  return keepsBinding(state, plan) ? valuesOf(state, plan) : undefined;
}

/** The value that benefit, its sign turned, has at the least: with all that is hoped for beside the sites. */
export function leastBenefitValue(state: SearchState): number {
  return -(benefitOfSites(state) + mostAspirationPoints(state.tables.ground.campus)) / 1000;
}

export function lexicographic(a: readonly number[], b: readonly number[]): number {
  for (const [i, value] of a.entries()) {
    const difference = value - (b[i] ?? 0);
    if (Math.abs(difference) > 1e-9) return difference;
  }
  return 0;
}

/** Whether all binding promises are kept; a search serves all care, so decisions are enough to tell. */
function keepsBinding(state: SearchState, plan: Plan): boolean {
  const { campus } = state.tables.ground;
  return (
    checkPrecedence(campus, plan).length === 0 &&
    campus.commitments.every(
      (c) => c.strength !== 'binding' || commitmentShortfall(campus, plan, c).amount === 0,
    ) &&
    mustHave(state.tables, 'binding').every((group) => group.some((l) => state.lives.has(l)))
  );
}

/** A plan with its sites and people only: enough for promises, since a search serves all care. */
function planSketch(state: SearchState): Plan {
  const decisions = { ...NO_DECISIONS, placements: placementsOf(state), hires: hiresOf(state) };
  return { decisions, labor: [], unserved: [], spending: [], compost: [] };
}

function valuesOf(state: SearchState, plan: Plan): number[] {
  const { campus } = state.tables.ground;
  const promises = tiersOf(campus).flatMap((t) =>
    t.commitment ? [commitmentShortfall(campus, plan, t.commitment).amount] : [],
  );
  return [...promises, -(benefitOfSites(state) + aspirationPoints(campus, plan)) / 1000];
}

/** Points of the sites alone, whatever else is hoped for. */
export function benefitOfSites({ lives }: SearchState): number {
  let benefit = 0;
  for (const life of lives) benefit += life.benefit;
  return benefit;
}
