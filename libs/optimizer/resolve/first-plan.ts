import type { Decisions } from '#domain/plan.js';
import { seededRandom } from '#units/random.js';
import { adopt } from '../construct/adopt.js';
import { construct, RECIPES } from '../construct/construct.js';
import { decisionsOf, type SearchState } from '../search/state.js';
import type { Tables } from '../search/tables.js';
import { soundIncumbent, type Incumbent } from '../solve/incumbent.js';
import { compareTiers } from '../tiers/tier-values.js';
import { fillPromisedYears } from './fill-years.js';
import type { ResolveOrder } from './order.js';

/** The plan to begin from, mended and its promised years filled again; else the best construction. */
export function firstPlan(tables: Tables, { start, seed }: ResolveOrder): Incumbent | undefined {
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

/** Decisions as a plan; `undefined` where it does not pass its checks. */
export function soundDecisions(
  { ground: { campus, charges } }: Tables,
  decisions: Decisions,
): Incumbent | undefined {
  return soundIncumbent(campus, decisions, charges);
}
