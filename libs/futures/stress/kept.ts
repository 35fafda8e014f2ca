import { lastBuildYear, plannedSeasons, yearAt, yearIndexOf } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { Commitment, CommitmentTest } from '#domain/commitment.js';
import { TASK_CLASSES } from '#domain/labor.js';
import type { Placement, Plan } from '#domain/plan.js';
import { commitmentShortfall } from '#rules/commitment-shortfall.js';
import { sitesEachYearShortfall } from '#rules/sites-each-year/check.js';

/** What came of a plan in one future. */
export interface CameAbout {
  readonly campus: Campus;
  readonly plan: Plan;
  /** Sites as they were built. */
  readonly built: readonly Placement[];
  /** Hundredths of an hour left undone at [season x classes of work]. */
  readonly unserved: Float64Array;
}

/** Index of the first year of the horizon in which a promise is broken; -1 where it is kept. */
export function brokenIn({ test, ...promise }: Commitment, of: CameAbout): number {
  switch (test.kind) {
    case 'sites-each-year':
      return firstYearShort(test, of);
    case 'no-unserved-care':
      return firstSeasonUnserved(test, of);
    default: {
      const short = commitmentShortfall(of.campus, sketch(of), { ...promise, test }).amount > 0;
      return short ? dueIn(of.campus, test) : -1;
    }
  }
}

function sketch({ plan, built }: CameAbout): Plan {
  return { ...plan, decisions: { ...plan.decisions, placements: built }, unserved: [] };
}

type Of<K extends CommitmentTest['kind']> = Extract<CommitmentTest, { readonly kind: K }>;

function firstYearShort(test: Of<'sites-each-year'>, of: CameAbout): number {
  const { campus } = of;
  const plan = sketch(of);
  const first = Math.max(test.from, campus.calendar.firstYear);
  const last = Math.min(test.to, lastBuildYear(campus.calendar));
  for (let year = first; year <= last; year++) {
    const one = { ...test, from: year as typeof test.from, to: year as typeof test.to };
    if (sitesEachYearShortfall(campus, plan, one).amount > 0)
      return year - campus.calendar.firstYear;
  }
  return -1;
}

function firstSeasonUnserved(
  test: Of<'no-unserved-care'>,
  { campus, unserved }: CameAbout,
): number {
  const classes = test.classes.map((c) => TASK_CLASSES.indexOf(c));
  const found = plannedSeasons(campus.calendar).find(
    ({ index, yearIndex, season }) =>
      yearIndex < campus.calendar.horizonYears &&
      (test.seasons === 'all' || test.seasons.includes(season.id)) &&
      classes.some((c) => (unserved[index * TASK_CLASSES.length + c] ?? 0) > 0),
  );
  return found?.yearIndex ?? -1;
}

/** The year in which a promise with one date is judged; the last of the horizon where it has none. */
export function dueIn(campus: Campus, test: CommitmentTest): number {
  const { calendar } = campus;
  const last = yearIndexOf(calendar, lastBuildYear(calendar));
  const due = 'by' in test ? yearIndexOf(calendar, test.by) : last;
  return Math.max(0, Math.min(last, due));
}

/** Fiscal year at an index, or `null` for -1. */
export function yearOrNull(campus: Campus, index: number): number | null {
  return index < 0 ? null : yearAt(campus.calendar, index);
}
