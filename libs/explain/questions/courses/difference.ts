import { dollarsInWords, hoursInWords, listInWords, wholeInWords } from '#units/in-words.js';
import type { PlanMeasures } from '../common/plan-measures.js';

/** One number that differs between two plans. */
export interface MeasureChange {
  readonly measure: keyof Omit<PlanMeasures, 'promiseKeptUntil'>;
  readonly from: number;
  readonly to: number;
  /** `to` less `from`. */
  readonly change: number;
  /** `3 more sites`. */
  readonly sentence: string;
}

interface Said {
  readonly measure: MeasureChange['measure'];
  /** Differences smaller than this are not told. */
  readonly least: number;
  readonly say: (size: number, how: 'more' | 'less') => string;
}

const fewer = (how: 'more' | 'less') => (how === 'more' ? 'more' : 'fewer');
const moreOf = (count: number, how: 'more' | 'less', [one, many]: readonly [string, string]) =>
  `${wholeInWords(count)} ${fewer(how)} ${Math.round(count) === 1 ? one : many}`;

/** Measures in the order in which a committee asks for them. */
const SAID: readonly Said[] = [
  {
    measure: 'promiseYearsKept',
    least: 0.5,
    say: (n, how) => moreOf(n, how, ['promised year kept', 'promised years kept']),
  },
  { measure: 'sitesBuilt', least: 0.5, say: (n, how) => moreOf(n, how, ['site', 'sites']) },
  {
    measure: 'areaBuiltSqFt',
    least: 50,
    say: (n, how) => `${wholeInWords(Math.round(n / 100) * 100)} sq ft ${how}`,
  },
  {
    measure: 'unservedHours',
    least: 0.5,
    say: (n, how) => `${hoursInWords(n)} of care left undone ${how}`,
  },
  {
    measure: 'benefitPoints',
    least: 0.5,
    say: (n, how) => `${wholeInWords(n)} points of benefit ${how}`,
  },
  {
    measure: 'peakPositions',
    least: 0.5,
    say: (n, how) => moreOf(n, how, ['position at the most', 'positions at the most']),
  },
  {
    measure: 'capitalDollars',
    least: 50,
    say: (n, how) => `${dollarsInWords(n)} of capital ${how}`,
  },
  { measure: 'positionDollars', least: 50, say: (n, how) => `${dollarsInWords(n)} of pay ${how}` },
  {
    measure: 'peakRecurringDollars',
    least: 50,
    say: (n, how) => `${dollarsInWords(n)} ${how} in the dearest year`,
  },
];

/** What differs between two plans, measured by the same campus. */
export function changesBetween(from: PlanMeasures, to: PlanMeasures): MeasureChange[] {
  return SAID.flatMap(({ measure, least, say }) => {
    const [a, b] = [from[measure], to[measure]];
    if (a === null || b === null || Math.abs(b - a) < least) return [];
    const sentence = say(Math.abs(b - a), b > a ? 'more' : 'less');
    return [{ measure, from: a, to: b, change: b - a, sentence }];
  });
}

/** `3 more sites, and 12,000 sq ft more`; nothing where nothing differs. */
export function changesInWords(changes: readonly MeasureChange[]): string {
  return changes.length === 0
    ? 'no difference in the plans found'
    : listInWords(changes.map(({ sentence }) => sentence));
}
