import { buildType } from '#domain/campus.js';
import type { Commitment, CommitmentTest } from '#domain/commitment.js';
import { commitmentShortfall } from '#rules/commitment-shortfall.js';
import { fiscalYearLabel, type FiscalYear } from '#units/fiscal-year.js';
import {
  counted,
  hoursInWords,
  firstInWords,
  squareFeetInWords,
  uncapitalized,
} from '#units/in-words.js';
import type { Ground } from '../ground.js';
import { preparedAndPlanted, siteName } from '../site-words.js';
import { yearsOf } from './yearly.js';

/** One sentence on how a promise stands, with its numbers. `missed`: years of a yearly one. */
export function promiseSentence(
  ground: Ground,
  commitment: Commitment,
  missed: readonly FiscalYear[],
): string {
  const { test } = commitment;
  const { amount, whole, where } = commitmentShortfall(ground.campus, ground.plan, commitment);
  switch (test.kind) {
    case 'sites-each-year':
      return yearlySentence(ground, test, missed);
    case 'named-site':
      return namedSentence(ground, test);
    case 'area':
      return areaSentence(test, amount);
    case 'no-new-positions-before':
      return amount === 0
        ? `No recurring position starts before ${fiscalYearLabel(test.year)}.`
        : `${counted(amount, 'recurring position')} would start before ${fiscalYearLabel(test.year)}.`;
    case 'no-unserved-care':
      return amount === 0
        ? 'All of this care has someone to do it, also in the five years after the plan.'
        : `${hoursInWords(amount / 100)} of this care have no one to do them, first in ${where[0] ?? ''}.`;
    case 'only-build-types':
      return amount === 0
        ? 'Every site is of a type that it names.'
        : `${counted(amount, 'site is', 'sites are')} of another type.`;
    case 'zone-balance':
      return amount === 0
        ? `Every zone has at least ${counted(test.leastPerZone, 'site')} in the end.`
        : `${counted(amount, 'site')} of ${whole} still missing in the end, in ${firstInWords(where, 4, 'zone')}.`;
  }
}

type TestOf<K extends CommitmentTest['kind']> = Extract<CommitmentTest, { kind: K }>;

function yearlySentence(
  ground: Ground,
  test: TestOf<'sites-each-year'>,
  missed: readonly FiscalYear[],
): string {
  const years = yearsOf(ground, test).length;
  const [first] = missed;
  if (first === undefined) return `Kept in all ${counted(years, 'year')} of the plan.`;
  const kept = years - missed.length;
  return `Kept in ${kept} of ${counted(years, 'year')}; missed first in ${fiscalYearLabel(first)}.`;
}

function namedSentence(ground: Ground, test: TestOf<'named-site'>): string {
  const { campus, placed } = ground;
  const place = placed.get(test.site);
  const name = siteName(campus, test.site);
  const by = fiscalYearLabel(test.by);
  if (!place) return `${name} is not in the plan.`;
  const when = preparedAndPlanted(campus.calendar, place.year);
  if (place.year > test.by) return `${name} comes after ${by}: ${when}.`;
  const wanted = test.buildTypes === 'any' || test.buildTypes.includes(place.buildType);
  return wanted
    ? `${name} is ${when}.`
    : `${name} is ${when}, but as ${uncapitalized(buildType(campus, place.buildType).name)}.`;
}

function areaSentence(test: TestOf<'area'>, missing: number): string {
  const by = fiscalYearLabel(test.by);
  const wanted = squareFeetInWords(test.sqFt);
  return missing === 0
    ? `The ${wanted} are reached by the end of ${by}, existing sites counted.`
    : `${squareFeetInWords(missing)} of ${wanted} are missing at the end of ${by}, existing sites counted.`;
}
