import type { Campus } from '#domain/campus.js';
import type { Decisions } from '#domain/plan.js';
import { seededRandom } from '#units/random.js';
import type { Ground } from '../columns/add-columns.js';
import { adopt } from '../construct/adopt.js';
import { proveByCounts } from '../counts/prove-by-counts.js';
import { readDecisions } from '../model/read-decisions.js';
import { construct, RECIPES } from '../construct/construct.js';
import { ruinAndRecreate } from '../improve/ruin-and-recreate.js';
import { decisionsOf, type SearchState } from '../search/state.js';
import { tablesOf } from '../search/tables.js';
import { pricesOf, type Prices } from '../improve/ranking.js';
import { secondsLimit } from '../solve/budget.js';
import { soundIncumbent, type Incumbent } from '../solve/incumbent.js';
import { relaxTier, solveTier, type TierSolve } from '../solve/solve-tier.js';
import { tiersOf } from '../tiers/tier-list.js';
import { fillPromisedYears } from './fill-years.js';
import type { ResolveAnswer, ResolveOrder } from './order.js';
import type { ResolveMeans } from './means.js';

/** Shares of the time left for the search by prices, and for a proof by counts. */
const SEARCH_SHARE = 0.25;
const COUNTS_SHARE = 0.7;

/** Branch-and-bound nodes of each proof. */
const PROOF_NODES = 2000;

/** Benefit below that of any plan: every plan is better. */
const WORTHLESS = -1e9;

type ExistsMeans = ResolveMeans & { readonly done: () => boolean };
type Unclocked = Omit<ResolveAnswer, 'seconds'>;

/**
 * Whether any plan keeps the binding rules: quick constructions that take binding promises for aims,
 * then a relaxation that may prove that there is none, then a search that its prices lead, then a proof
 * by counts, then a whole solve.
 */
export function planExists(ground: Ground, order: ResolveOrder, means: ExistsMeans): Unclocked {
  const begun = beginSearch(ground, order, means.done);
  if (begun.found) return answerOf(begun.found, 0);
  const nothing = { values: [], bounds: [], rounds: 0 };
  if (means.done()) return { ...nothing, ending: 'not-found' };
  const left = () => (order.seconds === undefined ? Infinity : order.seconds - means.elapsed());
  const question = { ground, solver: means.solver, held: new Map(), seed: order.seed };
  const shouldStop = means.done;
  const limits = secondsLimit(left());
  const relaxed = relaxTier({ ...question, tier: 'benefit', shouldStop, limits });
  if (relaxed === 'infeasible') return impossible(0);
  const prices = relaxed ? pricesOf(relaxed) : undefined;
  const until = means.elapsed() + left() * SEARCH_SHARE;
  const { found, rounds } = bySearch(begun, order, {
    done: () => means.done() || means.elapsed() >= until,
    ...(prices ? { prices } : {}),
  });
  if (found) return answerOf(found, rounds);
  for (const prove of [byCounts, bySolver]) {
    const seconds = prove === byCounts ? left() * COUNTS_SHARE : left();
    const until = means.elapsed() + seconds;
    const answer = means.done()
      ? undefined
      : prove(question, { done: means.done, secondsLeft: () => until - means.elapsed(), rounds });
    if (answer) return answer;
  }
  return { ...nothing, rounds, ending: 'not-found' };
}

type Question = Pick<TierSolve, 'ground' | 'solver' | 'held' | 'seed'>;

interface ProofMeans {
  readonly done: () => boolean;
  readonly secondsLeft: () => number;
  readonly rounds: number;
}

/** A proof, by counts, that there is no plan; now and then a plan. */
function byCounts(question: Question, of: ProofMeans): Unclocked | undefined {
  let found: Incumbent | undefined;
  const proof = proveByCounts({
    ...question,
    tier: 'benefit',
    worth: () => WORTHLESS,
    nodes: PROOF_NODES,
    onBound: () => undefined,
    onWhole: (values, { columns }) => {
      found = soundIn(question.ground, readDecisions(columns, values));
    },
    shouldStop: of.done,
    secondsLeft: of.secondsLeft,
  });
  if (found) return answerOf(found, of.rounds);
  return proof === 'nothing-better' ? impossible(of.rounds) : undefined;
}

/** A plan, or a proof that there is none, by the solver. */
function bySolver(question: Question, of: ProofMeans): Unclocked | undefined {
  const { ground } = question;
  let found: Incumbent | undefined;
  const take = (decisions: Decisions) => (found ??= soundIn(ground, decisions));
  const { ended, decisions } = solveTier({
    ...question,
    tier: tiersOf(ground.campus)[0]?.name ?? '',
    limits: { nodes: PROOF_NODES, ...secondsLimit(of.secondsLeft()) },
    shouldStop: () => found !== undefined || of.done(),
    onBound: () => undefined,
    onDecisions: take,
  });
  if (decisions) take(decisions);
  if (found) return answerOf(found, of.rounds);
  return ended === 'infeasible' ? impossible(of.rounds) : undefined;
}

function soundIn({ campus, charges }: Ground, decisions: Decisions): Incumbent | undefined {
  return soundIncumbent(campus, decisions, charges);
}

function impossible(rounds: number): Unclocked {
  return { ending: 'impossible', values: [], bounds: [], rounds };
}

function answerOf({ plan, values }: Incumbent, rounds: number): Omit<ResolveAnswer, 'seconds'> {
  return { ending: 'found', plan, values, bounds: values.map(() => null), rounds };
}

interface Begun {
  readonly found?: Incumbent;
  /** States to search on from, the most promising first. */
  readonly states: readonly SearchState[];
  readonly judge: (state: SearchState) => Incumbent | undefined;
}

/** What is at hand at once: the start as far as it fits, and constructions, their promised years filled. */
function beginSearch(ground: Ground, order: ResolveOrder, done: () => boolean): Begun {
  const { campus, start, seed } = order;
  const soft = tablesOf({ ...ground, campus: withPromisesIntended(campus) });
  const judge = (state: SearchState) => soundIn(ground, decisionsOf(state));
  const states: SearchState[] = [];
  const makers = [
    ...(start ? [() => adopt(soft, start)] : []),
    ...RECIPES.map((recipe) => () => construct(soft, recipe)),
  ];
  for (const make of makers) {
    const state = make();
    if (state) fillPromisedYears(state, seededRandom(seed));
    const found = state && judge(state);
    if (found) return { found, states, judge };
    if (state) states.push(state);
    if (done()) break;
  }
  return { states, judge };
}

function bySearch(
  { states, judge }: Begun,
  { seed, effort }: ResolveOrder,
  { done, prices }: { readonly done: () => boolean; readonly prices?: Prices },
): { readonly found?: Incumbent; readonly rounds: number } {
  const most = effort.kind === 'rounds' ? effort.rounds : 0;
  const [first] = states;
  if (!first) return { rounds: 0 };
  let found: Incumbent | undefined;
  let rounds = 0;
  ruinAndRecreate(first, {
    random: seededRandom(seed),
    rounds: most,
    done: () => found !== undefined || done() || rounds++ >= most,
    onBetter: (state) => (found ??= judge(state)),
    ...(prices ? { prices } : {}),
  });
  return { ...(found ? { found } : {}), rounds };
}

/**
 * The same campus with promises of a count or an area as the first aims to come near to, so that a search
 * may begin; other aims do not matter for whether there is a plan.
 */
function withPromisesIntended(campus: Campus): Campus {
  const binding = campus.commitments.filter((c) => c.strength === 'binding');
  const commitments = binding.map((c) =>
    c.test.kind === 'sites-each-year' || c.test.kind === 'area'
      ? { ...c, strength: 'intended' as const }
      : c,
  );
  return { ...campus, commitments };
}
