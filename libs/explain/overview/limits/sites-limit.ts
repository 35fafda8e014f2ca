import { capitalized, counted } from '#units/in-words.js';
import type { LimitRow, YearRow } from '../plan-overview.js';

const NEVER = { resource: 'sites', year: null, label: null, shortBy: null, unit: 'sites' } as const;

/** The first year in which fewer candidates could be prepared than the yearly promise asks for. */
export function sitesLimit(years: readonly YearRow[]): LimitRow {
  const short = years.find(({ sitesWanted, sitesLeft }) => sitesLeft < sitesWanted);
  if (!short) return { ...NEVER, sentence: tightest(years) };
  const { year, sitesLeft, sitesWanted } = short;
  const left =
    sitesLeft === 0
      ? 'no candidate is left'
      : `only ${counted(sitesLeft, 'candidate is', 'candidates are')} left`;
  return {
    resource: 'sites',
    year,
    label: year,
    shortBy: sitesWanted - sitesLeft,
    unit: sitesWanted - sitesLeft === 1 ? 'site' : 'sites',
    sentence: `${capitalized(left)} that could be prepared then; ${counted(sitesWanted, 'is', 'are')} wanted.`,
  };
}

function tightest(years: readonly YearRow[]): string {
  const [first, ...rest] = years;
  if (!first) return 'The plan has no year.';
  const least = rest.reduce((a, b) => (b.sitesLeft < a.sitesLeft ? b : a), first);
  if (years.every(({ sitesLeft }) => sitesLeft === 0))
    return 'No candidate is open in any year, and no promise asks for one.';
  return `Enough. Fewest in ${least.year}: ${counted(least.sitesLeft, 'candidate')} open.`;
}
