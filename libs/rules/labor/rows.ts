import { plannedSeasons, seasonLabel, type SeasonInstance } from '#domain/calendar.js';
import { MAY_GO_UNSERVED, TASK_CLASSES, type TaskClass } from '#domain/labor.js';
import { NO_DECISIONS } from '#domain/plan.js';
import { careNeeds } from '#estimating/plan-needs/labor-needs.js';
import { FINE_PARTS, type CareClass } from '#estimating/site-charges/type-profile.js';
import type { Term, Variable } from '#mip/model.js';
import type { ModelDraft } from '#mip/model-draft.js';
import type { Columns } from '../columns.js';
import { careAsked, installBySeason, type Asked } from './asked.js';
import { closedSubsets } from './closed-subsets.js';
import { seasonSources, type Source } from './season-sources.js';
import { siteMaxima, type SiteMost } from './site-maxima.js';

/** Hours of care left unserved in one season and class, in hours. */
export interface UnservedColumn {
  readonly season: number;
  readonly taskClass: TaskClass;
  readonly variable: Variable;
}

/** Whether care may go unserved in the model, or all of it must be served. */
export type UnservedCare = 'allowed' | 'none';

/**
 * Labor of every season of horizon and tail, in hours. A set K of task classes needs no more than
 * the sources that may do any of it have; written for every closed set, this is the same as an
 * allocation of hours (Gale 1957, Hoffman 1960: feasible flows by subset conditions).
 *
 *     existing[K, i] + sum over lives l of install[l, K, i] x[l] + sum over cohorts g of care[g, K, i] ground[g]
 *        + leaders[K, i] - unserved[K, i]
 *        <=  pools[K, i] + sum of event hours x work days + sum of position hours x hires
 *     unserved[c, i]  <=  existing[c, i] + sum over cohorts g of care[g, c, i] ground[g]     for each class c
 *
 * Care is exact here and rounded up to hundredths of an hour, class by class, in the accounts; rows
 * that no plan can reach are left out.
 */
export function addLaborRows(
  draft: ModelDraft,
  columns: Columns,
  care: UnservedCare,
): UnservedColumn[] {
  const existing = careNeeds(columns.campus, NO_DECISIONS, columns.charges);
  const unserved: UnservedColumn[] = [];
  const installs = installBySeason(columns);
  const siteMost = siteMaxima(columns);
  for (const season of plannedSeasons(columns.campus.calendar)) {
    const here = care === 'allowed' ? addUnserved(draft, columns, season) : [];
    unserved.push(...here);
    const needs = existing[season.index];
    const installing = installs.get(season.index) ?? [];
    if (needs)
      addSeasonRows({
        draft,
        columns,
        season,
        existing: needs,
        unserved: here,
        installing,
        siteMost,
      });
  }
  return unserved;
}

function addUnserved(
  draft: ModelDraft,
  columns: Columns,
  season: SeasonInstance,
): UnservedColumn[] {
  const label = seasonLabel(columns.campus.calendar, season);
  return MAY_GO_UNSERVED.map((taskClass) => ({
    season: season.index,
    taskClass,
    variable: draft.addVariable({ label: `unserved ${taskClass} ${label}`, kind: 'continuous' }),
  }));
}

interface SeasonModel {
  readonly draft: ModelDraft;
  readonly columns: Columns;
  readonly season: SeasonInstance;
  /** Fine parts of an hour. */
  readonly existing: Readonly<Record<CareClass, number>>;
  readonly unserved: readonly UnservedColumn[];
  readonly installing: readonly Asked[];
  readonly siteMost: SiteMost;
}

function addSeasonRows(at: SeasonModel): void {
  const asked = [...at.installing, ...careAsked(at.columns, at.season)];
  const sources = seasonSources(at.columns, at.season);
  const wanted = TASK_CLASSES.filter((c) => mostOf(at, asked, new Set([c])) > 0);
  const subsets = closedSubsets(
    wanted,
    sources.map((s) => s.tasks),
  ).map((classes) => ({
    classes,
    serving: sources.filter((s) => s.tasks.some((t) => classes.has(t))),
  }));
  const needed = subsets.filter(
    (row) => !subsets.some((other) => covers(at, asked, { row, by: other })),
  );
  for (const row of needed) addSubsetRow({ at, asked, ...row });
  for (const each of at.unserved) addUnservedLimit(at, asked, each);
}

/** No more can go unserved than is wanted; else it would stand in for work that must be done. */
function addUnservedLimit(
  at: SeasonModel,
  asked: readonly Asked[],
  { taskClass, variable }: UnservedColumn,
): void {
  const one = new Set([taskClass]);
  at.draft.addRow({
    label: `unserved ${taskClass} ${seasonLabel(at.columns.campus.calendar, at.season)}`,
    terms: [
      { variable, coefficient: 1 },
      ...asked
        .map((a) => ({ variable: a.variable, coefficient: -hoursIn(a.hours, one) }))
        .filter((t) => t.coefficient < 0),
    ],
    atMost: hoursIn(at.existing, one) / FINE_PARTS,
  });
}

interface Subset {
  readonly classes: ReadonlySet<TaskClass>;
  readonly serving: readonly Source[];
}

/**
 * Whether a smaller set's row implies a larger one's: the most that the other classes can want is
 * there anyway from sources that the smaller set does not call on.
 */
function covers(
  at: SeasonModel,
  asked: readonly Asked[],
  { row, by }: { row: Subset; by: Subset },
): boolean {
  if (by.classes.size >= row.classes.size) return false;
  if (![...by.classes].every((c) => row.classes.has(c))) return false;
  const others = new Set([...row.classes].filter((c) => !by.classes.has(c)));
  const spare = row.serving
    .filter((s) => !by.serving.includes(s))
    .reduce((sum, s) => sum + s.fixed, 0);
  return mostOf(at, asked, others) <= spare;
}

/** The most hours that a set of classes can want in a season, existing sites included. */
function mostOf(at: SeasonModel, asked: readonly Asked[], classes: ReadonlySet<TaskClass>): number {
  const { columns, season, existing } = at;
  const leaders = classes.has('supervise') ? mostLeaders(leaderTerms(columns, season), columns) : 0;
  const standing = hoursIn(existing, classes);
  let byColumn = 0;
  for (const a of asked) byColumn += a.most * hoursIn(a.hours, classes);
  return Math.min(byColumn, at.siteMost(season.order, classes)) + leaders + standing / FINE_PARTS;
}

function hoursIn(
  hours: Readonly<Partial<Record<TaskClass, number>>>,
  classes: ReadonlySet<TaskClass>,
): number {
  let sum = 0;
  for (const c of classes) sum += hours[c] ?? 0;
  return sum;
}

interface SubsetRow extends Subset {
  readonly at: SeasonModel;
  readonly asked: readonly Asked[];
}

function addSubsetRow({ at, asked, serving, classes }: SubsetRow): void {
  const { draft, columns, season, existing, unserved } = at;
  const terms = asked
    .map((a) => ({ variable: a.variable, coefficient: hoursIn(a.hours, classes) }))
    .filter((a) => a.coefficient > 0);
  const supply = serving.reduce((sum, s) => sum + s.fixed, 0);
  if (mostOf(at, asked, classes) <= supply) return;
  draft.addRow({
    label: `labor ${[...classes].join('+')} ${seasonLabel(columns.campus.calendar, season)}`,
    terms: [
      ...terms,
      ...(classes.has('supervise') ? leaderTerms(columns, season) : []),
      ...serving.flatMap((s) => s.terms).map((t) => ({ ...t, coefficient: -t.coefficient })),
      ...unserved
        .filter((u) => classes.has(u.taskClass))
        .map(({ variable }) => ({ variable, coefficient: -1 })),
    ],
    atMost: supply - hoursIn(existing, classes) / FINE_PARTS,
  });
}

function mostLeaders(leaders: readonly Term[], columns: Columns): number {
  const most = new Map(columns.workDays.map((w) => [w.variable, w.day.mostPerSeason]));
  return leaders.reduce((sum, t) => sum + t.coefficient * (most.get(t.variable) ?? 0), 0);
}

function leaderTerms(columns: Columns, season: SeasonInstance): Term[] {
  return columns.workDays
    .filter((w) => w.yearIndex === season.yearIndex && w.day.season === season.season.id)
    .map(({ variable, day }) => ({ variable, coefficient: day.leaderHoursEach / 100 }));
}
