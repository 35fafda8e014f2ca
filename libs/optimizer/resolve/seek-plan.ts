import type { Campus } from '#domain/campus.js';
import { MAY_GO_UNSERVED } from '#domain/labor.js';
import type { Decisions } from '#domain/plan.js';
import { seededRandom } from '#units/random.js';
import type { Ground } from '../columns/add-columns.js';
import { adopt } from '../construct/adopt.js';
import { construct, RECIPES } from '../construct/construct.js';
import type { Prices } from '../improve/prices.js';
import { ruinAndRecreate } from '../improve/ruin-and-recreate.js';
import { decisionsOf, type SearchState } from '../search/state.js';
import { tablesOf } from '../search/tables.js';
import { withAmpleLabor } from '../solve/relaxations.js';
import { soundIncumbent, type Incumbent } from '../solve/incumbent.js';
import { fillPromisedYears } from './fill-years.js';
import type { ResolveOrder } from './order.js';

/** What was found at once, and where to search on from. */
export interface Begun {
  readonly found?: Incumbent;
  /** The most promising. Left out: not even what is fixed can be served. */
  readonly state?: SearchState;
}

/** What is at hand at once: the start as far as it fits, and constructions, their promised years filled. */
export function beginSearch(ground: Ground, order: ResolveOrder, done: () => boolean): Begun {
  const { campus, start, seed } = order;
  const soft = tablesOf({ ...ground, campus: careFree(withPromisesIntended(campus)) });
  const states: SearchState[] = [];
  const makers = [
    ...(start ? [() => adopt(soft, start)] : []),
    ...RECIPES.map((recipe) => () => construct(soft, recipe)),
  ];
  for (const make of makers) {
    const state = make();
    if (state) fillPromisedYears(state, seededRandom(seed));
    const found = state && soundIn(ground, decisionsOf(state));
    if (found) return { found };
    if (state) states.push(state);
    if (done()) break;
  }
  const [state] = states;
  return state ? { state } : {};
}

/** Searches on until a plan keeps all that is binding. */
export function searchFrom(
  state: SearchState,
  ground: Ground,
  of: {
    readonly seed: number;
    readonly rounds: number;
    readonly done: () => boolean;
    readonly prices?: Prices;
  },
): { readonly found?: Incumbent; readonly rounds: number } {
  let found: Incumbent | undefined;
  let rounds = 0;
  ruinAndRecreate(state, {
    random: seededRandom(of.seed),
    rounds: of.rounds,
    done: () => found !== undefined || of.done() || rounds++ >= of.rounds,
    onBetter: (better) => (found ??= soundIn(ground, decisionsOf(better))),
    ...(of.prices ? { prices: of.prices } : {}),
  });
  return { ...(found ? { found } : {}), rounds };
}

/** Decisions as a plan; `undefined` where it does not pass its checks. */
export function soundIn({ campus, charges }: Ground, decisions: Decisions): Incumbent | undefined {
  return soundIncumbent(campus, decisions, charges);
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

/** Care that no binding promise asks for may go undone, so it stands in the way of no plan. */
function careFree(campus: Campus): Campus {
  const isAsked = campus.commitments.some(({ test }) => test.kind === 'no-unserved-care');
  return isAsked ? campus : withAmpleLabor(campus, { tasks: MAY_GO_UNSERVED });
}
