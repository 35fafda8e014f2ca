import type { Decisions } from '#domain/plan.js';
import type { Ground } from '../columns/add-columns.js';
import { proveByCounts } from '../counts/prove-by-counts.js';
import { pricesOf } from '../improve/prices.js';
import { readDecisions } from '../model/read-decisions.js';
import { secondsLimit } from '../solve/budget.js';
import type { Incumbent } from '../solve/incumbent.js';
import { relaxTier, solveTier, type TierSolve } from '../solve/solve-tier.js';
import { tiersOf } from '../tiers/tier-list.js';
import { provenByEarlyYears } from './early-years.js';
import { neededGround, neededYears } from './needed-years.js';
import type { ResolveAnswer, ResolveOrder } from './order.js';
import type { ResolveMeans } from './means.js';
import { beginSearch, searchFrom, soundIn, type Begun } from './seek-plan.js';

/** Shares of the time left for the search by prices, for the lives that are needed, and for a proof by counts. */
const SEARCH_SHARE = 0.25;
const NEEDED_SHARE = 0.6;
const COUNTS_SHARE = 0.7;

/** Branch-and-bound nodes of each solve and proof. */
const NODES = 2000;

/** Benefit below that of any plan: every plan is better. */
const WORTHLESS = -1e9;

type ExistsMeans = ResolveMeans & { readonly done: () => boolean };
type Unclocked = Omit<ResolveAnswer, 'seconds'>;

/**
 * Whether any plan keeps the binding rules. A plan is sought among the lives that begin while something
 * binding is still asked for: by quick constructions that take binding promises for aims, by a search
 * that the prices of a relaxation lead, and by the solver. That there is none is proven by relaxations,
 * of the first years and then of all, by counts, and by a whole solve.
 */
export function planExists(ground: Ground, order: ResolveOrder, means: ExistsMeans): Unclocked {
  const needed = neededGround(ground);
  const begun = beginSearch(needed, order, means.done);
  if (begun.found) return answerOf(begun.found, 0);
  const left = () => (order.seconds === undefined ? Infinity : order.seconds - means.elapsed());
  const common = { solver: means.solver, held: new Map(), seed: order.seed };
  const question = { ...common, shouldStop: means.done };
  const early = { needed: neededYears(order.campus), secondsLeft: left };
  if (provenByEarlyYears(order.campus, question, early)) return impossible(0);
  const search: Search = { ground, needed, begun, order, question, left, elapsed: means.elapsed };
  let rounds = 0;
  for (const step of [byPrices, bySolverAmongNeeded, byCounts, bySolver]) {
    if (means.done()) break;
    const answer = step(search);
    rounds += answer.rounds;
    if (answer.ending !== 'not-found') return { ...answer, rounds };
  }
  return { ...NOTHING, rounds };
}

interface Search {
  readonly ground: Ground;
  readonly needed: Ground;
  readonly begun: Begun;
  readonly order: ResolveOrder;
  readonly question: Pick<TierSolve, 'solver' | 'held' | 'seed' | 'shouldStop'>;
  /** Seconds left for the whole answer. */
  readonly left: () => number;
  readonly elapsed: () => number;
}

/** A step that ends at a share of the time left. */
function within({ left, elapsed, question }: Search, share: number) {
  const until = elapsed() + left() * share;
  const secondsLeft = () => until - elapsed();
  return { secondsLeft, shouldStop: () => question.shouldStop() || secondsLeft() <= 0 };
}

/** A relaxation, which may prove that there is no plan, and a search that its prices lead. */
function byPrices(search: Search): Unclocked {
  const { ground, needed, begun, order, question, left } = search;
  const tier = { ...question, tier: 'benefit', limits: secondsLimit(left()) };
  const relaxed = relaxTier({ ...tier, ground: needed });
  if (relaxed === 'infeasible') {
    const isWhole = needed === ground || relaxTier({ ...tier, ground }) === 'infeasible';
    return isWhole ? impossible(0) : NOTHING;
  }
  const { effort, seed } = order;
  const rounds = effort.kind === 'rounds' ? effort.rounds : 0;
  if (!begun.state) return NOTHING;
  const { shouldStop: done } = within(search, SEARCH_SHARE);
  const prices = relaxed ? { prices: pricesOf(relaxed) } : {};
  const of = { seed, rounds, done, ...prices };
  const { found, rounds: made } = searchFrom(begun.state, needed, of);
  return found ? answerOf(found, made) : { ...NOTHING, rounds: made };
}

/** A proof, by counts, that there is no plan; now and then a plan. */
function byCounts(search: Search): Unclocked {
  const { ground, question } = search;
  let found: Incumbent | undefined;
  const proof = proveByCounts({
    ...{ ...question, ...within(search, COUNTS_SHARE) },
    ground,
    tier: 'benefit',
    worth: () => WORTHLESS,
    nodes: NODES,
    onBound: () => undefined,
    onWhole: (values, { columns }) => {
      found = soundIn(ground, readDecisions(columns, values));
    },
  });
  if (found) return answerOf(found, 0);
  return proof === 'nothing-better' ? impossible(0) : NOTHING;
}

/** A plan by the solver, among the lives that are needed; where these are all, or a proof that there is none. */
function bySolverAmongNeeded(search: Search): Unclocked {
  const { ground, needed } = search;
  const answer = solved(search, needed, needed === ground ? 1 - COUNTS_SHARE : NEEDED_SHARE);
  return answer.ending === 'impossible' && needed !== ground ? NOTHING : answer;
}

/** A plan, or a proof that there is none, by the solver. */
function bySolver(search: Search): Unclocked {
  return solved(search, search.ground, 1);
}

function solved(search: Search, ground: Ground, share: number): Unclocked {
  const { secondsLeft, shouldStop } = within(search, share);
  let found: Incumbent | undefined;
  const take = (decisions: Decisions) => (found ??= soundIn(ground, decisions));
  const { ended, decisions } = solveTier({
    ...search.question,
    ground,
    tier: tiersOf(ground.campus)[0]?.name ?? '',
    limits: { nodes: NODES, ...secondsLimit(secondsLeft()) },
    shouldStop: () => found !== undefined || shouldStop(),
    onBound: () => undefined,
    onDecisions: take,
  });
  if (decisions) take(decisions);
  if (found) return answerOf(found, 0);
  return ended === 'infeasible' ? impossible(0) : NOTHING;
}

const NOTHING: Unclocked = { ending: 'not-found', values: [], bounds: [], rounds: 0 };

function impossible(rounds: number): Unclocked {
  return { ...NOTHING, ending: 'impossible', rounds };
}

function answerOf({ plan, values }: Incumbent, rounds: number): Unclocked {
  return { ending: 'found', plan, values, bounds: values.map(() => null), rounds };
}
