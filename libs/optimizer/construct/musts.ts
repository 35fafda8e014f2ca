import { candidate, type Campus, type HandPlacement } from '#domain/campus.js';
import { yearIndexOf } from '#domain/calendar.js';
import type { Lifecycle } from '#rules/columns.js';
import { countsIn, finishedIn, standsThrough } from '#rules/counting.js';
import { frozenSites } from '#rules/stability/frozen.js';
import { groupBy } from '#units/group-by.js';
import type { Tables } from '../search/tables.js';

/** Which promises of a named site are meant: the binding alone, or the intended as well. */
export type NamedStrength = 'binding' | 'intended';

/** What a plan must or should have, looked up again and again by a search. */
interface Musts {
  readonly groups: Readonly<Record<NamedStrength, readonly (readonly Lifecycle[])[]>>;
  readonly promised: readonly number[];
  readonly counting: ReadonlyMap<number, readonly Lifecycle[]>;
}

const kept = new WeakMap<Tables, Musts>();

function mustsOf(tables: Tables): Musts {
  const found = kept.get(tables);
  if (found) return found;
  const { campus } = tables.ground;
  const made = {
    groups: { binding: groupsOf(tables, 'binding'), intended: groupsOf(tables, 'intended') },
    promised: Array.from({ length: campus.calendar.horizonYears }, (_, year) =>
      promisedIn(campus, year),
    ),
    counting: countingByYear(tables),
  };
  kept.set(tables, made);
  return made;
}

/** Groups of lives of which one must be in the plan: frozen, fixed by hand, promised by name. */
export function mustHave(tables: Tables, least: NamedStrength): readonly (readonly Lifecycle[])[] {
  return mustsOf(tables).groups[least];
}

/** Sites that promises of a count ask for, by year index. */
export function promisedByYear(tables: Tables): readonly number[] {
  return mustsOf(tables).promised;
}

/** Lives that count as one of the sites that promises of a count ask for, by the year index in which they do. */
export function livesCounting(tables: Tables): ReadonlyMap<number, readonly Lifecycle[]> {
  return mustsOf(tables).counting;
}

function countingByYear(tables: Tables): ReadonlyMap<number, readonly Lifecycle[]> {
  const yearOf = (life: Lifecycle) => countsInYear(tables, life);
  const counting = tables.ground.lifecycles.filter((life) => yearOf(life) !== undefined);
  return groupBy(counting, (life) => yearOf(life) ?? NaN);
}

/**
 * The year index in which a life counts as one of the sites that promises of a count ask for; `undefined`
 * where it is too small for one of them, or does not last.
 */
export function countsInYear({ ground: { campus } }: Tables, life: Lifecycle): number | undefined {
  const known = counted.get(campus)?.get(life);
  if (known !== undefined) return known < 0 ? undefined : known;
  const year = yearCounted(campus, life);
  const years = counted.get(campus) ?? new WeakMap<Lifecycle, number>();
  counted.set(campus, years.set(life, year ?? -1));
  return year;
}

/** Asked for again and again by a search: -1 where a life never counts. */
const counted = new WeakMap<Campus, WeakMap<Lifecycle, number>>();

function yearCounted(campus: Campus, { site, placement }: Lifecycle): number | undefined {
  const { areaSqFt } = candidate(campus, site);
  const tests = campus.commitments.flatMap(({ test, strength }) =>
    test.kind === 'sites-each-year' && strength !== 'aspiration' ? [test] : [],
  );
  const least = Math.max(0, ...tests.map((t) => t.countsFromSqFt));
  const lasts = tests.every((t) => t.returnedCounts) || standsThrough(campus, placement);
  const year = countsIn(placement, areaSqFt, least);
  return year === undefined || !lasts ? undefined : yearIndexOf(campus.calendar, year);
}

/** Sites that a promise of a count asks for in a year (index). */
function promisedIn(campus: Campus, year: number): number {
  return campus.commitments.reduce((most, { test, strength }) => {
    if (test.kind !== 'sites-each-year' || strength === 'aspiration') return most;
    const from = yearIndexOf(campus.calendar, test.from);
    const to = yearIndexOf(campus.calendar, test.to);
    return year >= from && year <= to ? Math.max(most, test.count) : most;
  }, 0);
}

function groupsOf({ ground }: Tables, least: NamedStrength): Lifecycle[][] {
  const { campus, lifecycles } = ground;
  const fixed = campus.handPlacements
    .filter((h) => h.kind === 'fixed')
    .map((h) => lifecycles.filter((l) => fitsHand(campus, h, l)));
  const named = campus.commitments.flatMap(({ test, strength }) => {
    if (test.kind !== 'named-site' || strength === 'aspiration') return [];
    if (strength === 'intended' && least === 'binding') return [];
    const lives = lifecycles.filter(
      (l) =>
        l.site === test.site &&
        finishedIn(l.placement) <= test.by &&
        (test.returnedCounts || standsThrough(campus, l.placement)) &&
        (test.buildTypes === 'any' || test.buildTypes.includes(l.buildType)),
    );
    return strength === 'binding' || lives.length > 0 ? [lives] : [];
  });
  const frozen = frozenSites(campus).map((site) => lifecycles.filter((l) => l.site === site));
  return [...frozen, ...fixed, ...named];
}

function fitsHand(campus: Campus, hand: HandPlacement, life: Lifecycle): boolean {
  return (
    hand.site === life.site &&
    (hand.buildType === undefined || hand.buildType === life.buildType) &&
    (hand.year === undefined || yearIndexOf(campus.calendar, hand.year) === life.yearIndex)
  );
}
