import type { Campus } from '#domain/campus.js';
import type { Decisions } from '#domain/plan.js';
import { seededRandom } from '#units/random.js';
import type { Ground } from '../columns/add-columns.js';
import { adopt } from '../construct/adopt.js';
import { construct, RECIPES } from '../construct/construct.js';
import { ruinAndRecreate } from '../improve/ruin-and-recreate.js';
import { decisionsOf, type SearchState } from '../search/state.js';
import { tablesOf } from '../search/tables.js';
import { pricesOf, type Prices } from '../improve/ranking.js';
import { secondsLimit } from '../solve/budget.js';
import { judgeDecisions, type Incumbent } from '../solve/incumbent.js';
import { relaxTier, solveTier, type TierSolve } from '../solve/solve-tier.js';
import { tiersOf } from '../tiers/tier-list.js';
import { fillPromisedYears } from './fill-years.js';
import type { ResolveAnswer, ResolveOrder } from './order.js';
import type { ResolveMeans } from './means.js';

/** Shares of the time left for the search by prices, and for a proof with people whole. */
const SEARCH_SHARE = 0.25;
const PEOPLE_SHARE = 0.7;

/** Branch-and-bound nodes of each proof. */
const PROOF_NODES = 2000;

type ExistsMeans = ResolveMeans & { readonly done: () => boolean };
type Unclocked = Omit<ResolveAnswer, 'seconds'>;

/**
 * Whether any plan keeps the binding rules: quick constructions that take binding promises for aims,
 * then a relaxation that may prove that there is none, then a search that its prices lead, then a proof
 * with sites in parts and people whole, then a whole solve.
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
  if (relaxed === 'infeasible') return { ...nothing, ending: 'impossible' };
  const prices = relaxed ? pricesOf(relaxed) : undefined;
  const until = means.elapsed() + left() * SEARCH_SHARE;
  const { found, rounds } = bySearch(begun, order, {
    done: () => means.done() || means.elapsed() >= until,
    ...(prices ? { prices } : {}),
  });
  if (found) return answerOf(found, rounds);
  for (const kind of ['in parts', 'whole'] as const) {
    const seconds = kind === 'in parts' ? left() * PEOPLE_SHARE : left();
    const own = kind === 'in parts' ? { ...ground, livesInParts: true as const } : ground;
    const of = { ...question, ground: own };
    const answer = means.done() ? undefined : bySolver(of, { seconds, done: means.done, rounds });
    if (answer) return answer;
  }
  return { ...nothing, rounds, ending: 'not-found' };
}

/** A plan or a proof by the solver; with sites in parts a proof only. */
function bySolver(
  question: Pick<TierSolve, 'ground' | 'solver' | 'held' | 'seed'>,
  of: { readonly seconds: number; readonly done: () => boolean; readonly rounds: number },
): Unclocked | undefined {
  const { campus, charges, livesInParts } = question.ground;
  let found: Incumbent | undefined;
  let any = false;
  const take = (decisions: Decisions) => {
    any = true;
    if (livesInParts) return;
    const judged = judgeDecisions(campus, decisions, charges);
    if (judged.objections.length === 0) found = judged.incumbent;
  };
  const { ended, decisions } = solveTier({
    ...question,
    tier: tiersOf(campus)[0]?.name ?? '',
    limits: { nodes: PROOF_NODES, ...secondsLimit(of.seconds) },
    shouldStop: () => (livesInParts ? any : found !== undefined) || of.done(),
    onBound: () => undefined,
    onDecisions: take,
  });
  if (!found && decisions) take(decisions);
  if (found) return answerOf(found, of.rounds);
  if (ended !== 'infeasible') return undefined;
  return { ending: 'impossible', values: [], bounds: [], rounds: of.rounds };
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
  const judge = (state: SearchState): Incumbent | undefined => {
    const judged = judgeDecisions(campus, decisionsOf(state), ground.charges);
    return judged.objections.length === 0 ? judged.incumbent : undefined;
  };
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
