import {
  plannedSeasons,
  plannedYears,
  seasonIndex,
  seasonLabel,
  seasonInstance,
  seasonOrder,
  yearAt,
} from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { COMPOST_GRADES, gradeSupply } from '#domain/compost.js';
import { firstStartYear } from '#estimating/season-supply/positions.js';
import type { CampusCharges } from '#estimating/site-charges/campus-charges.js';
import type { PlacedPart } from '#estimating/site-charges/placed-parts.js';
import type { Variable } from '#mip/model.js';
import type { ModelDraft } from '#mip/model-draft.js';
import type {
  CohortColumn,
  Columns,
  HireColumn,
  Lifecycle,
  LifecycleColumn,
  PurchaseColumn,
  WorkDayColumn,
} from '#rules/columns.js';
import type { Counted } from '../counts/count-columns.js';
import { hiresWhereFrozen } from '#rules/stability/columns.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import { groupBy } from '#units/group-by.js';

export interface Ground {
  readonly campus: Campus;
  readonly charges: CampusCharges;
  readonly lifecycles: readonly Lifecycle[];
  /** Lives that are taken as decided. Left out: none. */
  readonly fixed?: ReadonlySet<Lifecycle>;
  /** Counts that stand beside the decisions, for bounds. Left out: none. */
  readonly counted?: Counted;
}

/** Adds the whole-number columns of a campus to a draft. */
export function addColumns(
  draft: ModelDraft,
  { campus, charges, lifecycles, fixed }: Ground,
): Columns {
  const lives = lifecycles.map((l) => ({
    ...l,
    variable: draft.addVariable({
      label: labelOf(l),
      kind: 'binary',
      upper: 1,
      lower: fixed?.has(l) ? 1 : 0,
    }),
  }));
  return {
    campus,
    charges,
    lifecycles: lives,
    cohorts: addCohorts(draft, lives),
    hires: addHires(draft, campus),
    workDays: addWorkDays(draft, campus),
    purchases: addPurchases(draft, campus),
  };
}

function labelOf({ placement: { site, buildType, year, secondHalf, change } }: Lifecycle): string {
  const half = secondHalf === undefined ? '' : ` and ${fiscalYearLabel(secondHalf)}`;
  const later = change ? ` ${change.id} at ${change.age}` : '';
  return `build ${site} ${buildType} ${fiscalYearLabel(year)}${half}${later}`;
}

interface Piece extends Pick<PlacedPart, 'charges' | 'life'> {
  readonly variable: Variable;
}

/**
 * Ground that ages as one.
 *
 *     ground[g]  =  sum over pieces p of lives l in cohort g  of  area[p] x[l]     in thousands of square feet
 */
function addCohorts(draft: ModelDraft, lives: readonly LifecycleColumn[]): CohortColumn[] {
  const pieces = lives.flatMap(({ variable, parts }) =>
    parts
      .filter(({ life }) => life.ends > life.planted)
      .map(({ charges, life }): Piece => ({ variable, charges, life })),
  );
  const cohortOf = ({ charges, life }: Piece) =>
    `${charges.buildType} ${life.planted} ${life.ends}`;
  return [...groupBy(pieces, cohortOf)].flatMap(([key, group]) => {
    const first = group[0];
    if (!first) return [];
    const variable = draft.addVariable({ label: `ground ${key}`, kind: 'continuous' });
    const areas = group.map((piece) => ({
      variable: piece.variable,
      coefficient: piece.charges.areaSqFt / 1000,
    }));
    draft.addRow({
      label: `ground ${key}`,
      terms: [...areas, { variable, coefficient: -1 }],
      atLeast: 0,
      atMost: 0,
    });
    const mostThousands = areas.reduce((sum, t) => sum + t.coefficient, 0);
    return [{ life: first.life, profile: first.charges.profile, variable, mostThousands }];
  });
}

function addHires(draft: ModelDraft, campus: Campus): HireColumn[] {
  return campus.positions.flatMap((position) => {
    const first = firstStartYear(campus.calendar, position);
    return Array.from({ length: campus.calendar.horizonYears }, (_, yearIndex) => {
      const frozen = hiresWhereFrozen(campus, position, yearIndex);
      return { yearIndex, lower: frozen ?? 0, upper: frozen ?? position.most, frozen };
    })
      .filter(({ yearIndex, frozen }) => yearIndex >= first || frozen)
      .map(({ yearIndex, lower, upper }) => ({
        position,
        yearIndex,
        variable: draft.addVariable({
          label: `hire ${position.id} ${fiscalYearLabel(yearAt(campus.calendar, yearIndex))}`,
          kind: 'integer',
          lower,
          upper,
        }),
      }));
  });
}

function addWorkDays(draft: ModelDraft, campus: Campus): WorkDayColumn[] {
  return campus.workDays.flatMap((day) =>
    Array.from({ length: plannedYears(campus.calendar) }, (_, yearIndex) => ({
      day,
      yearIndex,
      variable: draft.addVariable({
        label: `work days ${day.id} ${fiscalYearLabel(yearAt(campus.calendar, yearIndex))}`,
        kind: 'integer',
        lower: alwaysHeld(campus, day.season, yearIndex) ? day.mostPerSeason : 0,
        upper: day.mostPerSeason,
      }),
    })),
  );
}

/**
 * Where people who only lead have hours for every work day of a season, holding all of them costs
 * nothing else, so no plan is lost by fixing them.
 */
export function alwaysHeld(campus: Campus, seasonId: string, yearIndex: number): boolean {
  const order = seasonOrder(campus.calendar, seasonId);
  const season = seasonInstance(campus.calendar, seasonIndex(campus.calendar, yearIndex, order));
  const leading = campus.pools
    .filter((p) => p.tasks.length === 1 && p.tasks[0] === 'supervise')
    .filter((p) => (p.from ?? season.year) <= season.year && season.year <= (p.to ?? season.year))
    .reduce((sum, p) => sum + (p.hours[seasonId] ?? 0), 0);
  const wanted = campus.workDays
    .filter((d) => d.season === seasonId)
    .reduce((sum, d) => sum + d.leaderHoursEach * d.mostPerSeason, 0);
  return wanted <= leading;
}

/** Compost is bought only in seasons that use it: an earlier purchase can wait in the heap of the seller. */
function addPurchases(draft: ModelDraft, campus: Campus): PurchaseColumn[] {
  const using = new Set([campus.calendar.prepareSeason, campus.compost.topDressSeason]);
  const seasons = plannedSeasons(campus.calendar).filter(({ season }) => using.has(season.id));
  return COMPOST_GRADES.flatMap((grade) => {
    const { mostBoughtPerSeason: upper } = gradeSupply(campus.compost, grade);
    if (upper === 0) return [];
    const named = grade === 'certified' ? 'compost' : `${grade} compost`;
    return seasons.map((instance) => ({
      season: instance.index,
      grade,
      variable: draft.addVariable({
        label: `buy ${named} ${seasonLabel(campus.calendar, instance)}`,
        kind: 'integer',
        upper,
      }),
    }));
  });
}
