import type { Lifecycle } from '#rules/columns.js';
import { settledHours } from '../construct/construct.js';
import { isOrdered, rivalsOf, typeAllowed } from '../construct/admissible.js';
import { countsInYear, mustHave, type NamedStrength } from '../construct/musts.js';
import type { Tables } from '../search/tables.js';
import type { Prices } from './prices.js';

/** What a search looks up again and again about lives, by number of the life. */
interface Traits {
  readonly lives: readonly Lifecycle[];
  readonly numberOf: ReadonlyMap<Lifecycle, number>;
  readonly sites: number;
  /** Number of the site. */
  readonly site: Int32Array;
  /** Year index in which it counts as one of the sites that promises of a count ask for; -1: in none. */
  readonly countsIn: Int32Array;
  /** 1 where its site must wait for another, or another for it. */
  readonly isOrdered: Uint8Array;
  /** Sites of which none may be built where one is, by number of the site. */
  readonly rivals: readonly (readonly number[])[];
  /** 1 where binding promises admit what it makes of its site. */
  readonly isAllowed: Uint8Array;
  /** Logarithms of its benefit and its settled hours of care. */
  readonly benefit: Float64Array;
  readonly care: Float64Array;
}

/** The lives that a search may take up. Lists hold numbers of lives, in the order of what they cost. */
export interface Candidates extends Traits {
  /** What taking it up costs the relaxation; 0 without prices. */
  readonly cost: Float64Array;
  readonly bySite: readonly Int32Array[];
  /** By the year index in which they count. */
  readonly byYear: readonly Int32Array[];
  /** Groups of which one must be in a plan. */
  readonly musts: Readonly<Record<NamedStrength, readonly Int32Array[]>>;
}

const kept = new WeakMap<Tables, Traits>();

export function candidatesOf(tables: Tables, prices?: Prices): Candidates {
  const traits = kept.get(tables) ?? traitsOf(tables);
  kept.set(tables, traits);
  const { lives, numberOf } = traits;
  const cost = Float64Array.from(lives, (life) => prices?.costOf(life) ?? 0);
  const allowed = Int32Array.from(lives.keys())
    .filter((i) => traits.isAllowed[i] === 1)
    .sort((a, b) => (cost[a] ?? 0) - (cost[b] ?? 0));
  const { horizonYears } = tables.ground.campus.calendar;
  const mustsOf = (least: NamedStrength) =>
    mustHave(tables, least).map((group) => {
      const numbers = new Set(group.map((life) => numberOf.get(life)));
      return allowed.filter((i) => numbers.has(i));
    });
  return {
    ...traits,
    cost,
    bySite: listsBy(allowed, traits.site, traits.sites),
    byYear: listsBy(allowed, traits.countsIn, horizonYears),
    musts: { binding: mustsOf('binding'), intended: mustsOf('intended') },
  };
}

function listsBy(numbers: Int32Array, key: Int32Array, keys: number): Int32Array[] {
  const lists = Array.from({ length: keys }, (): number[] => []);
  for (const i of numbers) lists[key[i] ?? -1]?.push(i);
  return lists.map((list) => Int32Array.from(list));
}

function traitsOf(tables: Tables): Traits {
  const { campus, lifecycles: lives } = tables.ground;
  const places = new Map<string, number>();
  for (const { site } of lives) if (!places.has(site)) places.set(site, places.size);
  return {
    lives,
    numberOf: new Map(lives.map((life, i) => [life, i])),
    sites: places.size,
    site: Int32Array.from(lives, ({ site }) => places.get(site) ?? -1),
    countsIn: Int32Array.from(lives, (life) => countsInYear(tables, life) ?? -1),
    isOrdered: Uint8Array.from(lives, ({ site }) => Number(isOrdered(campus, site))),
    rivals: Array.from(places.keys(), (site) =>
      rivalsOf(campus, site).flatMap((rival) => places.get(rival) ?? []),
    ),
    isAllowed: Uint8Array.from(lives, (life) => Number(typeAllowed(campus, life))),
    benefit: Float64Array.from(lives, ({ benefit }) => Math.log(1 + benefit)),
    care: Float64Array.from(lives, (life) => Math.log(1 + settledHours(life))),
  };
}
