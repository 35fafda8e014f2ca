import { capitalized, counted } from '#units/in-words.js';
import type { LimitRow, YearRow } from '../plan-overview.js';

const NEVER = { resource: 'sites', year: null, label: null, shortBy: null, unit: 'sites' } as const;

/** The first year in which fewer candidates could be prepared than the yearly promise asks for. */
export function sitesLimit(years: readonly YearRow[]): LimitRow {
  const short = years.find(({ sitesWanted, sitesLeft }) => sitesLeft < sitesWanted);
  if (!short) return { ...NEVER, ...tightest(years) };
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
    figures: [
      { what: 'left', value: sitesLeft, unit: 'candidates' },
      { what: 'wanted', value: sitesWanted, unit: 'sites' },
    ],
    sentence: `${capitalized(left)} that could be prepared then; ${counted(sitesWanted, 'is', 'are')} wanted.`,
  };
}

function tightest(years: readonly YearRow[]): Pick<LimitRow, 'figures' | 'sentence'> {
  const [first, ...rest] = years;
  if (!first) return { figures: [], sentence: 'The plan has no year.' };
  const least = rest.reduce((a, b) => (b.sitesLeft < a.sitesLeft ? b : a), first);
  if (years.every(({ sitesLeft }) => sitesLeft === 0))
    return {
      figures: [],
      sentence: 'No candidate is open in any year, and no promise asks for one.',
    };
  return {
    figures: [
      { what: 'fewest in', value: least.year, unit: 'label' },
      { what: 'open', value: least.sitesLeft, unit: 'candidates' },
    ],
    sentence: `Enough. Fewest in ${least.year}: ${counted(least.sitesLeft, 'candidate')} open.`,
  };
}
