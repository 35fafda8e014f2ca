import { plannedSeasons, seasonLabel, type SeasonInstance } from '#domain/calendar.js';
import { MAY_GO_UNSERVED, TASK_CLASSES, type TaskClass } from '#domain/labor.js';
import { careNeeds } from '#estimating/plan-needs/labor-needs.js';
import { positionHours } from '#estimating/season-supply/positions.js';
import { poolHours } from '#estimating/season-supply/sources.js';
import { ageInSeason } from '#estimating/site-charges/life.js';
import type { SiteCharges } from '#estimating/site-charges/site-charges.js';
import {
  CARE_CLASSES,
  FINE_PARTS,
  PROFILE_PARTS,
  SETTLED_AGE,
  type CareClass,
} from '#estimating/site-charges/type-profile.js';
import type { Term, Variable } from '#mip/model.js';
import type { ModelDraft } from '#mip/model-draft.js';
import type { Columns } from '../columns.js';
import { closedSubsets, type SourceTasks } from './closed-subsets.js';

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
  const existing = careNeeds(columns.campus, NOTHING, columns.charges);
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

const NOTHING = { placements: [], hires: [], workDays: [], purchases: [] };

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
  const asked = [...at.installing, ...careAsked(at)];
  const sources = seasonSources(at);
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
  const standing = [...classes].reduce(
    (sum, c) => sum + ((existing as Partial<Record<TaskClass, number>>)[c] ?? 0),
    0,
  );
  const byColumn = mostAsked(
    asked.map((a) => ({ most: a.most, coefficient: hoursIn(a.hours, classes) })),
  );
  return Math.min(byColumn, at.siteMost(season.order, classes)) + leaders + standing / FINE_PARTS;
}

function hoursIn(
  hours: Readonly<Partial<Record<TaskClass, number>>>,
  classes: ReadonlySet<TaskClass>,
): number {
  return [...classes].reduce((sum, c) => sum + (hours[c] ?? 0), 0);
}

interface Source {
  readonly tasks: SourceTasks;
  /** Hours that are there in any case. */
  readonly fixed: number;
  /** Hours for each unit of a column. */
  readonly terms: readonly Term[];
}

/** Hours that one unit of a column asks for, by class, and the most units that it may have. */
interface Asked {
  readonly variable: Variable;
  readonly most: number;
  readonly hours: Readonly<Partial<Record<TaskClass, number>>>;
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

function mostAsked(asked: readonly { most: number; coefficient: number }[]): number {
  return asked.reduce((sum, a) => sum + a.most * a.coefficient, 0);
}

/** The most hours that all sites together can ask for in a season of the year, by its order. */
type SiteMost = (order: number, classes: ReadonlySet<TaskClass>) => number;

/** Each site counts once, at its heaviest age and type. */
function siteMaxima(columns: Columns): SiteMost {
  const charges = [...new Set(columns.lifecycles.map((l) => l.charges))];
  const kept = new Map<string, number>();
  return (order, classes) => {
    const key = `${order} ${[...classes].sort().join(' ')}`;
    const found = kept.get(key);
    if (found !== undefined) return found;
    const worst = new Map<string, number>();
    for (const of of charges) {
      worst.set(of.site, Math.max(worst.get(of.site) ?? 0, heaviest(of, order, classes)));
    }
    const most = [...worst.values()].reduce((a, b) => a + b, 0);
    kept.set(key, most);
    return most;
  };
}

function heaviest(of: SiteCharges, order: number, classes: ReadonlySet<TaskClass>): number {
  const install =
    (classes.has('prepare') ? of.prepareHours : 0) + (classes.has('plant') ? of.plantHours : 0);
  let care = 0;
  for (let age = 1; age <= SETTLED_AGE; age++) {
    let fine = 0;
    for (const c of CARE_CLASSES) if (classes.has(c)) fine += of.profile.care(c, age, order);
    care = Math.max(care, fine);
  }
  return install / 100 + (care * of.areaSqFt) / FINE_PARTS;
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

/** What lives ask for in the seasons in which they are prepared and planted. */
function installBySeason(columns: Columns): Map<number, Asked[]> {
  const seasons = new Map<number, Asked[]>();
  const ask = (season: number, asked: Asked) => {
    const list = seasons.get(season);
    if (list) list.push(asked);
    else seasons.set(season, [asked]);
  };
  for (const { variable, life, charges } of columns.lifecycles) {
    if (life.prepared !== undefined) {
      ask(life.prepared, { variable, most: 1, hours: { prepare: charges.prepareHours / 100 } });
    }
    ask(life.planted, { variable, most: 1, hours: { plant: charges.plantHours / 100 } });
  }
  return seasons;
}

function careAsked({ columns, season }: SeasonModel): Asked[] {
  return columns.cohorts.flatMap(({ variable, life, profile, mostThousands }) => {
    const age = ageInSeason(columns.campus.calendar, life, season.index);
    if (age < 1) return [];
    const hours = (c: CareClass) => profile.care(c, age, season.order) / PROFILE_PARTS;
    const byClass = Object.fromEntries(CARE_CLASSES.map((c) => [c, hours(c)]));
    return [{ variable, most: mostThousands, hours: byClass }];
  });
}

function seasonSources({ columns, season }: SeasonModel): Source[] {
  const pools = columns.campus.pools
    .map((p) => ({ tasks: p.tasks, fixed: poolHours(p, season) / 100, terms: [] }))
    .filter((p) => p.fixed > 0);
  const days = columns.workDays
    .filter((w) => w.yearIndex === season.yearIndex && w.day.season === season.season.id)
    .map((w) => ({
      tasks: w.day.tasks,
      fixed: 0,
      terms: [{ variable: w.variable, coefficient: w.day.hoursEach / 100 }],
    }));
  return [...pools, ...days, ...positionSources(columns, season)];
}

function positionSources(columns: Columns, season: SeasonInstance): Source[] {
  return columns.campus.positions
    .map((position) => ({
      tasks: position.tasks,
      fixed: 0,
      terms: columns.hires
        .filter((h) => h.position === position)
        .map((h) => ({
          variable: h.variable,
          coefficient:
            positionHours(columns.campus.calendar, position, { startYear: h.yearIndex, season }) /
            100,
        }))
        .filter((t) => t.coefficient > 0),
    }))
    .filter((s) => s.terms.length > 0);
}
