import type { Decisions } from '#domain/plan.js';
import { seededRandom } from '#units/random.js';
import { ruinAndRecreate } from '../improve/ruin-and-recreate.js';
import type { Prices } from '../improve/prices.js';
import { decisionsOf } from '../search/state.js';
import { staffedStateOf } from '../search/state-of.js';
import type { Tables } from '../search/tables.js';
import type { Incumbent } from '../solve/incumbent.js';
import { compareTiers } from '../tiers/tier-values.js';
import { soundDecisions } from './first-plan.js';
import { pricesFor } from './guide-prices.js';
import type { ResolveOrder, RunPlan, SearchRun } from './order.js';

interface Runs {
  readonly order: ResolveOrder;
  readonly done: () => boolean;
}

interface Searched {
  /** Of all runs, verified. */
  readonly best: Incumbent;
  readonly runs: readonly RunPlan[];
  readonly rounds: number;
}

/** Searches on from a plan, once for each run; all runs use the same tables and prices. */
export function searchRuns(tables: Tables, first: Incumbent, { order, done }: Runs): Searched {
  const { rounds: wanted = 0, prices: guide } = order.effort.kind === 'rounds' ? order.effort : {};
  const prices = guide && pricesFor(tables.ground, guide);
  let best = first;
  let rounds = 0;
  const runs: RunPlan[] = [];
  for (const run of order.runs ?? [{ seed: order.seed }]) {
    if (runs.length > 0 && done()) break;
    const begin = beginning(tables, run, first);
    const of = { seed: run.seed, wanted, done, ...(prices ? { prices } : {}) };
    const { betters, rounds: made } = searchOn(tables, begin.decisions, of);
    rounds += made;
    const found = lastSound(tables, betters);
    runs.push(found && isBetter(tables, found, begin) ? planOf(found) : begin);
    if (found && isBetter(tables, found, best)) best = found;
  }
  return { best: withEarlier(tables, best, runs), runs, rounds };
}

const planOf = ({ plan, values }: Incumbent): RunPlan => ({ decisions: plan.decisions, values });

function beginning(tables: Tables, { from }: SearchRun, first: Incumbent): RunPlan {
  return from && isBetter(tables, from, first) ? from : planOf(first);
}

/** A plan that a run went on from without bettering it may still be the best of all. */
function withEarlier(tables: Tables, best: Incumbent, runs: readonly RunPlan[]): Incumbent {
  const ahead = runs.filter((run) => isBetter(tables, run, best));
  const [top] = ahead.sort((a, b) => compareTiers(tables.ground.campus, a.values, b.values));
  return (top && soundDecisions(tables, top.decisions)) ?? best;
}

interface Search {
  readonly seed: number;
  readonly wanted: number;
  readonly done: () => boolean;
  readonly prices?: Prices;
}

function searchOn(
  tables: Tables,
  from: Decisions,
  { seed, wanted, done, prices }: Search,
): { readonly betters: readonly Decisions[]; readonly rounds: number } {
  const betters: Decisions[] = [];
  let rounds = 0;
  if (wanted > 0) {
    ruinAndRecreate(staffedStateOf(tables, from), {
      random: seededRandom(seed),
      rounds: wanted,
      done: () => done() || rounds++ >= wanted,
      onBetter: (state) => betters.push(decisionsOf(state)),
      ...(prices ? { prices } : {}),
    });
  }
  return { betters, rounds: Math.min(rounds, wanted) };
}

/** To judge a plan takes as long as many rounds, so only the last is judged, and those before where it does not pass. */
function lastSound(tables: Tables, betters: readonly Decisions[]): Incumbent | undefined {
  for (const decisions of [...betters].reverse()) {
    const found = soundDecisions(tables, decisions);
    if (found) return found;
  }
  return undefined;
}

type Reached = Pick<RunPlan, 'values'>;

function isBetter({ ground: { campus } }: Tables, a: Reached, b: Reached): boolean {
  return compareTiers(campus, a.values, b.values) < 0;
}
