import { seasonInstance } from '#domain/calendar.js';
import type { Commitment } from '#domain/commitment.js';
import { commitmentShortfall } from '#rules/commitment-shortfall.js';
import { sitesCounted } from '#rules/sites-each-year/check.js';
import { fiscalYearLabel, yearsLater, type FiscalYear } from '#units/fiscal-year.js';
import type { Ground } from '../ground.js';
import type { PromiseRow } from '../plan-overview.js';
import { promiseSentence } from './promise-sentence.js';
import { yearsOf } from './yearly.js';

/** Every promise and how far the plan keeps it, in the order of the file. */
export function promiseRows(ground: Ground): PromiseRow[] {
  return ground.campus.commitments.map((commitment) => promiseRow(ground, commitment));
}

function promiseRow(ground: Ground, commitment: Commitment): PromiseRow {
  const { amount, whole } = commitmentShortfall(ground.campus, ground.plan, commitment);
  const partly = whole > 0 && amount < whole;
  const span = yearsTested(ground, commitment);
  const missed = span?.missed ?? [];
  return {
    id: commitment.id,
    name: commitment.name,
    strength: commitment.strength,
    status: amount === 0 ? 'kept' : partly ? 'partly kept' : 'missed',
    keptUntil: span === undefined ? null : keptUntil(span),
    missedYears: missed.map(fiscalYearLabel),
    sentence: promiseSentence(ground, commitment, missed),
  };
}

interface Span {
  readonly first: FiscalYear;
  readonly last: FiscalYear;
  readonly missed: readonly FiscalYear[];
}

/** The years in which a yearly promise is tested, and those in which it fails. */
function yearsTested(ground: Ground, { test }: Commitment): Span | undefined {
  if (test.kind === 'sites-each-year') {
    const years = yearsOf(ground, test);
    const missed = years.filter((year) => sitesCounted(ground, test, year) < test.count);
    return spanOf(years, missed);
  }
  if (test.kind !== 'no-unserved-care') return undefined;
  const { calendar } = ground.campus;
  const short = ground.plan.unserved
    .filter(({ taskClass }) => test.classes.includes(taskClass))
    .map(({ season }) => seasonInstance(calendar, season))
    .filter(({ season }) => test.seasons === 'all' || test.seasons.includes(season.id));
  const missed = [...new Set(short.map(({ year }) => year))].sort((a, b) => a - b);
  return spanOf(ground.years, missed);
}

function spanOf(years: readonly FiscalYear[], missed: readonly FiscalYear[]): Span | undefined {
  const [first, last] = [years[0], years.at(-1)];
  return first === undefined || last === undefined ? undefined : { first, last, missed };
}

/** The last year without a break; `null` where the first is missed already. */
function keptUntil({ first, last, missed: [miss] }: Span): string | null {
  if (miss === undefined || miss > last) return fiscalYearLabel(last);
  return miss <= first ? null : fiscalYearLabel(yearsLater(miss, -1));
}
