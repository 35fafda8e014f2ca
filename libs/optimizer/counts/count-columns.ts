import type { Term, Variable } from '#mip/model.js';
import type { ModelDraft } from '#mip/model-draft.js';
import type { Columns, LifecycleColumn } from '#rules/columns.js';
import { groupBy } from '#units/group-by.js';

/**
 * What is counted: sites begun by the end of a year, people of a recurring position held by then, sites
 * of a build type, whether a site is built at all, or as a type, and sites of a type begun in a year.
 */
export type CountKind = 'held' | 'begun' | 'site' | 'type' | 'site-as-type' | 'type-in-year';

/** A whole number that follows from the decisions, as a column of its own. */
export interface CountColumn {
  readonly kind: CountKind;
  /** Counts that run on from each other share it. */
  readonly series: string;
  readonly key: string;
  readonly variable: Variable;
  /** Of people: of which position they are, and by the end of which year (index) they are held. */
  readonly held?: { readonly position: string; readonly yearIndex: number };
}

/** The most that counts may come to, by key. */
export type CountLimits = ReadonlyMap<string, number>;

/** Which counts a model has, and their limits. Left out of a model: none. */
export interface Counted {
  readonly kinds: 'running' | 'all';
  readonly limits: CountLimits;
}

/** No limits known yet. */
export const NO_LIMITS: CountLimits = new Map();

/** Running counts of which nothing is known. */
export const NOTHING_COUNTED_OUT: Counted = { kinds: 'running', limits: NO_LIMITS };

/**
 * Adds counts to a draft. `running`: those that run on from year to year only.
 *
 *     begun[t]    =  begun[t - 1]   +  sum over lives l begun in year t of  x[l]
 *     held[p, t]  =  held[p, t - 1] +  h[p, t]             for each recurring position p
 *     count[g]    =  sum over lives l in group g of  x[l]  for each other group
 */
export function addCounts(draft: ModelDraft, columns: Columns, counted: Counted): CountColumn[] {
  const add = adder(draft, counted.limits);
  const running = [...heldCounts(columns, add), ...begunCounts(columns, add)];
  return counted.kinds === 'running' ? running : [...running, ...groupCounts(columns, add)];
}

/** What a count is of: `name` tells it apart within its series. */
interface CountName extends Pick<CountColumn, 'kind' | 'series' | 'held'> {
  readonly name: string | number;
}

type Add = (of: CountName, terms: readonly Term[]) => CountColumn;

function adder(draft: ModelDraft, limits: CountLimits): Add {
  return ({ kind, series, name, held }, terms) => {
    const key = `${series} ${name}`;
    const upper = limits.get(key);
    const variable = draft.addVariable({
      label: `count ${key}`,
      kind: 'integer',
      ...(upper === undefined ? {} : { upper }),
    });
    draft.addRow({
      label: `count ${key}`,
      terms: [...terms, { variable, coefficient: -1 }],
      atLeast: 0,
      atMost: 0,
    });
    return { kind, series, key, variable, ...(held ? { held } : {}) };
  };
}

interface Yearly {
  readonly yearIndex: number;
  readonly variable: Variable;
}

function termsOf(of: readonly Pick<Yearly, 'variable'>[]): Term[] {
  return of.map(({ variable }) => ({ variable, coefficient: 1 }));
}

/** A count for each year that adds what is new in that year to the count before. */
function runningCounts(
  of: readonly Yearly[],
  add: (year: number, terms: readonly Term[]) => CountColumn,
): CountColumn[] {
  const byYear = groupBy(of, ({ yearIndex }) => yearIndex);
  const counts: CountColumn[] = [];
  for (const year of [...byYear.keys()].sort((a, b) => a - b)) {
    const before = counts.at(-1);
    const kept = before ? [{ variable: before.variable, coefficient: 1 }] : [];
    counts.push(add(year, [...kept, ...termsOf(byYear.get(year) ?? [])]));
  }
  return counts;
}

function begunCounts({ lifecycles }: Columns, add: Add): CountColumn[] {
  const of = { kind: 'begun', series: 'begun' } as const;
  return runningCounts(lifecycles, (year, terms) => add({ ...of, name: year }, terms));
}

function heldCounts({ campus, hires }: Columns, add: Add): CountColumn[] {
  return campus.positions
    .filter((p) => p.term === 'recurring')
    .flatMap(({ id }) => {
      const own = hires.filter((h) => h.position.id === id);
      const of = { kind: 'held', series: `held ${id}` } as const;
      return runningCounts(own, (yearIndex, terms) =>
        add({ ...of, name: yearIndex, held: { position: id, yearIndex } }, terms),
      );
    });
}

function groupCounts({ lifecycles }: Columns, add: Add): CountColumn[] {
  const groups: readonly [CountKind, (l: LifecycleColumn) => string][] = [
    ['site', (l) => l.site],
    ['type', (l) => l.buildType],
    ['site-as-type', (l) => `${l.site} ${l.buildType}`],
    ['type-in-year', (l) => `${l.buildType} ${l.yearIndex}`],
  ];
  return groups.flatMap(([kind, keyOf]) =>
    [...groupBy(lifecycles, keyOf)]
      .filter(([, lives]) => lives.length > 1)
      .map(([name, lives]) => add({ kind, series: kind, name }, termsOf(lives))),
  );
}
