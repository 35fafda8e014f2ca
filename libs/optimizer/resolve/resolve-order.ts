import type { Campus } from '#domain/campus.js';
import type { Decisions } from '#domain/plan.js';
import { seededRandom } from '#units/random.js';
import { groundOf } from '../columns/ground-of.js';
import { adopt } from '../construct/adopt.js';
import { construct, RECIPES } from '../construct/construct.js';
import { ruinAndRecreate } from '../improve/ruin-and-recreate.js';
import { decisionsOf, type SearchState } from '../search/state.js';
import { stateOf } from '../search/state-of.js';
import { tablesOf, type Tables } from '../search/tables.js';
import { judgeDecisions, type Incumbent } from '../solve/incumbent.js';
import { quietSurroundings } from '../solve/quiet-surroundings.js';
import { solveCampus } from '../solve/solve-campus.js';
import { compareTiers } from '../tiers/tier-values.js';
import { fillPromisedYears } from './fill-years.js';
import { guidePrices, pricesFor } from './guide-prices.js';
import type { ResolveAnswer, ResolveOrder } from './order.js';
import type { ResolveMeans } from './means.js';
import { planExists } from './plan-exists.js';
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
  const { best, rounds } = searchFrom(tables, first, { order, done });
  const { plan, values } = best;
  return { ending: 'found', plan, values, bounds: values.map(() => null), rounds };
}

/** The plan to begin from, mended and its promised years filled again; else the best construction. */
function firstPlan(tables: Tables, { start, seed }: ResolveOrder): Incumbent | undefined {
  const mended = start && adopt(tables, start);
  if (mended) {
    const before = decisionsOf(mended);
    fillPromisedYears(mended, seededRandom(seed));
    const found = sound(tables, mended) ?? soundDecisions(tables, before);
    if (found) return found;
  }
  const { campus } = tables.ground;
  return RECIPES.map((recipe) => sound(tables, construct(tables, recipe)))
    .filter((found) => found !== undefined)
    .sort((a, b) => compareTiers(campus, a.values, b.values))[0];
}

function sound(tables: Tables, state: SearchState | undefined): Incumbent | undefined {
  return state && soundDecisions(tables, decisionsOf(state));
}

function soundDecisions(
  { ground: { campus, charges } }: Tables,
  decisions: Decisions,
): Incumbent | undefined {
  const { incumbent, objections } = judgeDecisions(campus, decisions, charges);
  return objections.length === 0 ? incumbent : undefined;
}

function searchFrom(
  tables: Tables,
  first: Incumbent,
  { order, done }: { readonly order: ResolveOrder; readonly done: () => boolean },
): { readonly best: Incumbent; readonly rounds: number } {
  const { rounds: wanted = 0, prices } = order.effort.kind === 'rounds' ? order.effort : {};
  const betters: Decisions[] = [];
  let rounds = 0;
  ruinAndRecreate(stateOf(tables, first.plan.decisions), {
    random: seededRandom(order.seed),
    rounds: wanted,
    done: () => done() || rounds++ >= wanted,
    onBetter: (state) => betters.push(decisionsOf(state)),
    ...(prices ? { prices: pricesFor(tables.ground, prices) } : {}),
  });
  return { best: lastSound(tables, betters, first), rounds: Math.min(rounds, wanted) };
}

/** To judge a plan takes as long as many rounds, so only the last is judged, and those before where it does not pass. */
function lastSound(tables: Tables, betters: readonly Decisions[], first: Incumbent): Incumbent {
  for (const decisions of [...betters].reverse()) {
    const found = soundDecisions(tables, decisions);
    if (found) return better(tables.ground.campus, found, first) ? found : first;
  }
  return first;
}

function better(campus: Campus, a: Incumbent, b: Incumbent): boolean {
  return compareTiers(campus, a.values, b.values) < 0;
}
