import type { Campus } from '#domain/campus.js';
import { seededRandom } from '#units/random.js';
import type { Ground } from '../columns/add-columns.js';
import { adopt } from '../construct/adopt.js';
import { construct, RECIPES } from '../construct/construct.js';
import { ruinAndRecreate } from '../improve/ruin-and-recreate.js';
import { decisionsOf, type SearchState } from '../search/state.js';
import { tablesOf } from '../search/tables.js';
import { judgeDecisions, type Incumbent } from '../solve/incumbent.js';
import { relaxationBound, solveTier } from '../solve/solve-tier.js';
import { tiersOf } from '../tiers/tier-list.js';
import type { ResolveAnswer, ResolveOrder } from './order.js';
import type { ResolveMeans } from './means.js';

/** Seconds of a whole solve, and its branch-and-bound nodes, where neither search nor relaxation decides. */
const WHOLE_SECONDS = 2;
const WHOLE_NODES = 2000;

/**
 * Whether any plan keeps the binding rules: a search that takes binding promises for intended ones
 * until none falls short, then a relaxation that may prove that there is none, then a whole solve.
 */
export function planExists(
  ground: Ground,
  order: ResolveOrder,
  means: ResolveMeans & { readonly done: () => boolean },
): Omit<ResolveAnswer, 'seconds'> {
  const searched = bySearch(ground, order, means.done);
  if (searched.found) return answerOf(searched.found, searched.rounds);
  const { rounds } = searched;
  const nothing = { values: [], bounds: [], rounds };
  if (means.done()) return { ...nothing, ending: 'not-found' };
  const tier = tiersOf(ground.campus)[0]?.name ?? '';
  const question = { ground, solver: means.solver, tier, held: new Map(), seed: order.seed };
  const seconds = order.seconds === undefined ? undefined : order.seconds - means.elapsed();
  const shouldStop = means.done;
  const limits = seconds === undefined ? {} : { seconds: Math.max(0.1, seconds) };
  const relaxed = relaxationBound({ ...question, shouldStop, limits });
  if (relaxed === 'infeasible') return { ...nothing, ending: 'impossible' };
  return wholeSolve(question, { ground, means, rounds, timed: seconds !== undefined });
}

interface Whole {
  readonly ground: Ground;
  readonly means: ResolveMeans & { readonly done: () => boolean };
  readonly rounds: number;
  /** Whether the order has a limit of time; without one the work alone is limited. */
  readonly timed: boolean;
}

function wholeSolve(
  question: Omit<
    Parameters<typeof solveTier>[0],
    'limits' | 'shouldStop' | 'onBound' | 'onDecisions'
  >,
  { ground: { campus, charges }, means, rounds, timed }: Whole,
): Omit<ResolveAnswer, 'seconds'> {
  let found: Incumbent | undefined;
  const take = (decisions: Incumbent['plan']['decisions']) => {
    const judged = judgeDecisions(campus, decisions, charges);
    if (judged.objections.length === 0) found = judged.incumbent;
  };
  const { ended, decisions } = solveTier({
    ...question,
    limits: { nodes: WHOLE_NODES, ...(timed ? { seconds: WHOLE_SECONDS } : {}) },
    shouldStop: () => found !== undefined || means.done(),
    onBound: () => undefined,
    onDecisions: take,
  });
  if (!found && decisions) take(decisions);
  if (found) return answerOf(found, rounds);
  const ending = ended === 'infeasible' ? 'impossible' : 'not-found';
  return { ending, values: [], bounds: [], rounds };
}

function answerOf({ plan, values }: Incumbent, rounds: number): Omit<ResolveAnswer, 'seconds'> {
  return { ending: 'found', plan, values, bounds: values.map(() => null), rounds };
}

function bySearch(
  ground: Ground,
  { campus, start, seed, effort }: ResolveOrder,
  done: () => boolean,
): { readonly found?: Incumbent; readonly rounds: number } {
  const most = effort.kind === 'rounds' ? effort.rounds : 0;
  const soft = tablesOf({ ...ground, campus: withPromisesIntended(campus) });
  const judge = (state: SearchState): Incumbent | undefined => {
    const judged = judgeDecisions(campus, decisionsOf(state), ground.charges);
    return judged.objections.length === 0 ? judged.incumbent : undefined;
  };
  const begun: SearchState[] = [];
  const makers = [
    ...(start ? [() => adopt(soft, start)] : []),
    ...RECIPES.map((recipe) => () => construct(soft, recipe)),
  ];
  for (const make of makers) {
    const state = make();
    const found = state && judge(state);
    if (found) return { found, rounds: 0 };
    if (state) begun.push(state);
    if (done()) break;
  }
  const [first] = begun;
  if (!first) return { rounds: 0 };
  let found: Incumbent | undefined;
  let rounds = 0;
  ruinAndRecreate(first, {
    random: seededRandom(seed),
    rounds: most,
    done: () => found !== undefined || done() || rounds++ >= most,
    onBetter: (state) => (found ??= judge(state)),
  });
  return { ...(found ? { found } : {}), rounds };
}

/** The same campus with promises of a count or an area as aims to come near to, so that a search may begin. */
function withPromisesIntended(campus: Campus): Campus {
  const commitments = campus.commitments.map((c) =>
    c.strength === 'binding' && (c.test.kind === 'sites-each-year' || c.test.kind === 'area')
      ? { ...c, strength: 'intended' as const }
      : c,
  );
  return { ...campus, commitments };
}
