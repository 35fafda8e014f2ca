import { groundOf } from '../columns/ground-of.js';
import { tablesOf } from '../search/tables.js';
import { quietSurroundings } from '../solve/quiet-surroundings.js';
import { solveCampus } from '../solve/solve-campus.js';
import { guidePrices } from './guide-prices.js';
import type { ResolveAnswer, ResolveOrder } from './order.js';
import { firstPlan } from './first-plan.js';
import type { ResolveMeans } from './means.js';
import { planExists } from './plan-exists.js';
import { searchRuns } from './search-runs.js';
import { tierBounds } from './tier-bounds.js';

/** Answers one order. Blocks its thread. */
export function resolveOrder(order: ResolveOrder, means: ResolveMeans): ResolveAnswer {
  const seconds = () => means.elapsed();
  if (order.effort.kind === 'proven') return { ...proven(order, means), seconds: seconds() };
  const found = searched(order, means);
  return { ...found, seconds: seconds() };
}

type Unclocked = Omit<ResolveAnswer, 'seconds'>;

const NOTHING = { values: [], bounds: [], rounds: 0 } as const;

function proven(
  { campus, start, seed }: ResolveOrder,
  { solver, elapsed }: ResolveMeans,
): Unclocked {
  const { report, plan } = solveCampus(campus, solver, {
    settings: { seed },
    ...(start ? { start } : {}),
    around: quietSurroundings(elapsed),
  });
  if (!plan)
    return { ...NOTHING, ending: report.ending === 'no-plan' ? 'impossible' : 'not-found' };
  return {
    ending: 'found',
    plan,
    values: report.tiers.map((t) => t.value),
    bounds: report.tiers.map((t) => t.bound),
    rounds: 0,
  };
}

function searched(order: ResolveOrder, means: ResolveMeans): Unclocked {
  const ground = groundOf(order.campus);
  const done = () => order.seconds !== undefined && means.elapsed() >= order.seconds;
  if (order.wish === 'exists') return planExists(ground, order, { ...means, done });
  const tables = tablesOf(ground);
  const first = firstPlan(tables, order);
  if (!first) return planExists(ground, order, { ...means, done });
  if (order.wish === 'bound') {
    const bounds = tierBounds(ground, { best: first, order, means });
    return { ...NOTHING, ending: 'found', bounds };
  }
  if (order.wish === 'prices') {
    const of = { solver: means.solver, shouldStop: done };
    const prices = guidePrices(ground, first.values, of);
    return { ...NOTHING, ending: 'found', ...(prices ? { prices } : {}) };
  }
  const { best, runs, rounds } = searchRuns(tables, first, { order, done });
  const { plan, values } = best;
  const several = order.runs ? { runs } : {};
  return { ending: 'found', plan, values, bounds: values.map(() => null), rounds, ...several };
}
