import { yearAt } from '#domain/calendar.js';
import { candidate, type Campus, type HandPlacement } from '#domain/campus.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { possibleLifecycles } from '#optimizer/columns/lifecycles.js';
import type { Lifecycle } from '#rules/columns.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import { yearlyPromises } from '../../overview/promises/yearly.js';
import { siteName } from '../../overview/site-words.js';

/** One thing that can be decided for next year, and the campus in which it is decided. */
export interface Choice {
  /** A site id, `none`, or the ids of several joined by a plus sign. */
  readonly id: string;
  readonly sites: readonly string[];
  readonly campus: Campus;
}

/** Smallest area that counts as a site; 0 where no promise says. */
export function countsFrom(campus: Campus): number {
  return yearlyPromises({ campus })[0]?.test.countsFromSqFt ?? 0;
}

/** Candidates that count and could be prepared in the first year, in order of id. */
export function eligibleNextYear(campus: Campus): string[] {
  const open = new Set(openLives(campus).flatMap((l) => (l.yearIndex === 0 ? [l.site] : [])));
  return [...open].sort();
}

/** First year in which a candidate that counts may be prepared; `null`: in none. */
export function firstOpenYear(campus: Campus): string | null {
  const first = Math.min(...openLives(campus).map((l) => l.yearIndex));
  return Number.isFinite(first) ? fiscalYearLabel(yearAt(campus.calendar, first)) : null;
}

function openLives(campus: Campus): Lifecycle[] {
  const free = unchosen(campus);
  const least = countsFrom(campus);
  return possibleLifecycles(free, campusCharges(free)).filter(
    ({ site }) => candidate(campus, site).areaSqFt >= least,
  );
}

/** Next year's build is these sites and no other that counts; no site at all: none is built. */
export function choose(campus: Campus, sites: readonly string[]): Choice {
  const year = campus.calendar.firstYear;
  const reason = 'the question: what if this were decided for next year';
  const hand = (site: string): HandPlacement => ({
    site,
    kind: sites.includes(site) ? 'fixed' : 'forbidden',
    year,
    reason,
  });
  const free = unchosen(campus);
  const handPlacements = [...free.handPlacements, ...eligibleNextYear(campus).map(hand)];
  return {
    id: sites.length === 0 ? 'none' : sites.join('+'),
    sites,
    campus: { ...free, handPlacements },
  };
}

/** The campus without what was fixed by hand for the first year, which is what is asked about. */
function unchosen(campus: Campus): Campus {
  const { firstYear } = campus.calendar;
  const handPlacements = campus.handPlacements.filter(
    (h) => !(h.kind === 'fixed' && h.year === firstYear),
  );
  return { ...campus, handPlacements };
}

/** `TVU-19 East Hall Court`; `No site`. */
export function choiceName(campus: Campus, { sites }: Pick<Choice, 'sites'>): string {
  return sites.length === 0 ? 'No site' : sites.map((id) => siteName(campus, id)).join(' and ');
}
