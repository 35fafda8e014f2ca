import { candidate, type Campus } from '#domain/campus.js';
import type { Decisions } from '#domain/plan.js';
import { groundOf } from '#optimizer/columns/ground-of.js';
import { settledHours } from '#optimizer/construct/construct.js';
import type { Lifecycle } from '#rules/columns.js';
import { finishedIn } from '#rules/counting.js';
import type { YearlyPromise } from './prefix.js';

/** How far the candidates alone carry a promise: a site of its own for every year. */
export interface SitesLast {
  /** Years to which there is one. */
  readonly years: number;
  /** No assignment, and so no plan, goes on for a year more. */
  readonly isProven: boolean;
  /** The sites in the years that they were given, each in its lightest life then. */
  readonly decisions: Decisions;
}

/** Ways to choose one site of every exclusive group that are looked through; beyond, groups are left out. */
const MOST_WAYS = 32;

/** How far the candidates alone carry a promise, by the best choice of one site in every exclusive group. */
export function sitesLast(campus: Campus, promise: YearlyPromise): SitesLast {
  const ways = campus.exclusiveGroups.reduce<string[][]>(
    (all, { sites }) =>
      all.flatMap((barred) =>
        sites.map((kept) => [...barred, ...sites.filter((site) => site !== kept)]),
      ),
    [[]],
  );
  const open = ways.length > MOST_WAYS ? [[]] : ways;
  const found = open.map((barred) => matched(campus, promise, new Set(barred)));
  return found.reduce((best, one) => (one.years > best.years ? one : best));
}

/**
 * A site of its own for every year, by the years in which each may be built (largest matching by
 * augmenting paths, year after year). Where a year finds none, no longer prefix does; only a site in
 * halves could count in another year than the one in which it is begun.
 */
function matched(campus: Campus, { test }: YearlyPromise, barred: ReadonlySet<string>): SitesLast {
  const { horizonYears } = campus.calendar;
  const lives = groundOf(campus).lifecycles.filter(
    (l) =>
      !barred.has(l.site) &&
      candidate(campus, l.site).areaSqFt >= test.countsFromSqFt &&
      keepsNamedPromises(campus, l),
  );
  const sitesOf = Array.from({ length: horizonYears }, () => new Set<string>());
  for (const l of lives) sitesOf[l.yearIndex]?.add(l.site);
  const yearOf = new Map<string, number>();
  const take = (year: number, seen: Set<string>): boolean =>
    [...(sitesOf[year] ?? [])].some((site) => {
      if (seen.has(site)) return false;
      seen.add(site);
      const other = yearOf.get(site);
      if (other !== undefined && !take(other, seen)) return false;
      yearOf.set(site, year);
      return true;
    });
  const missed = sitesOf.findIndex((_, year) => !take(year, new Set()));
  const inHalves = campus.candidates.some(({ phasing }) => phasing);
  return {
    years: missed < 0 ? horizonYears : missed,
    isProven: missed >= 0 && !inHalves,
    decisions: decisionsOf(yearOf, lives),
  };
}

/** A site that is promised by name has to be built as it is promised. */
function keepsNamedPromises({ commitments }: Campus, { site, placement }: Lifecycle): boolean {
  return commitments.every(
    ({ test, strength }) =>
      strength !== 'binding' ||
      test.kind !== 'named-site' ||
      test.site !== site ||
      (finishedIn(placement) <= test.by &&
        (test.buildTypes === 'any' || test.buildTypes.includes(placement.buildType))),
  );
}

function decisionsOf(yearOf: ReadonlyMap<string, number>, lives: readonly Lifecycle[]): Decisions {
  const placements = [...yearOf].flatMap(([site, year]) => {
    const own = lives.filter((l) => l.site === site && l.yearIndex === year);
    const [lightest] = own.sort((a, b) => settledHours(a) - settledHours(b));
    return lightest ? [lightest.placement] : [];
  });
  return { placements, hires: [], workDays: [], purchases: [] };
}
