import type { Term, Variable } from '#mip/model.js';
import type { ModelDraft } from '#mip/model-draft.js';
import type { Columns, LifecycleColumn } from '#rules/columns.js';

/**
 * What is counted: sites begun by the end of a year, people of a recurring position held by then, sites
 * of a build type, whether a site is built at all, or as a type, and sites of a type begun in a year.
 */
export type CountKind = 'held' | 'begun' | 'site' | 'type' | 'site-as-type' | 'type-in-year';

/** A whole number that follows from the decisions, as a column of its own. */
export interface CountColumn {
  readonly kind: CountKind;
  readonly key: string;
  readonly variable: Variable;
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

type Add = (kind: CountKind, name: string, terms: readonly Term[]) => CountColumn;

function adder(draft: ModelDraft, limits: CountLimits): Add {
  return (kind, name, terms) => {
    const key = `${kind} ${name}`;
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
    return { kind, key, variable };
  };
}

/** A count for each year that adds what is new in that year to the count before. */
function runningCounts(
  byYear: ReadonlyMap<number, readonly Term[]>,
  add: (year: number, terms: readonly Term[]) => CountColumn,
): CountColumn[] {
  const counts: CountColumn[] = [];
  for (const year of [...byYear.keys()].sort((a, b) => a - b)) {
    const before = counts.at(-1);
    const kept = before ? [{ variable: before.variable, coefficient: 1 }] : [];
    counts.push(add(year, [...kept, ...(byYear.get(year) ?? [])]));
  }
  return counts;
}

function begunCounts({ lifecycles }: Columns, add: Add): CountColumn[] {
  const byYear = grouped(lifecycles, (l) => l.yearIndex);
  return runningCounts(byYear, (year, terms) => add('begun', String(year), terms));
}

function heldCounts({ campus, hires }: Columns, add: Add): CountColumn[] {
  return campus.positions
    .filter((p) => p.term === 'recurring')
    .flatMap(({ id }) => {
      const own = hires.filter((h) => h.position.id === id);
      const byYear = grouped(own, (h) => h.yearIndex);
      return runningCounts(byYear, (year, terms) => add('held', `${id} ${year}`, terms));
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
    [...grouped(lifecycles, keyOf)]
      .filter(([, terms]) => terms.length > 1)
      .map(([name, terms]) => add(kind, name, terms)),
  );
}

function grouped<T extends { readonly variable: Variable }, K>(
  list: readonly T[],
  keyOf: (of: T) => K,
): Map<K, Term[]> {
  const groups = new Map<K, Term[]>();
  for (const of of list) {
    const term = { variable: of.variable, coefficient: 1 };
    const group = groups.get(keyOf(of));
    if (group) group.push(term);
    else groups.set(keyOf(of), [term]);
  }
  return groups;
}
