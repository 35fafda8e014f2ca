import { plannedSeasons, seasonLabel, type SeasonInstance } from '#domain/calendar.js';
import { MAY_GO_UNSERVED, TASK_CLASSES, type TaskClass } from '#domain/labor.js';
import { careNeeds } from '#estimating/plan-needs/labor-needs.js';
import { positionHours } from '#estimating/season-supply/positions.js';
import { poolHours } from '#estimating/season-supply/sources.js';
import { ageInSeason } from '#estimating/site-charges/life.js';
import {
  CARE_CLASSES,
  FINE_PARTS,
  PROFILE_PARTS,
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
 *
 * Care is exact here and rounded up to hundredths of an hour, class by class, in the accounts; rows
 * that no plan can reach are left out.
 */
export function addLaborRows(draft: ModelDraft, columns: Columns, care: UnservedCare): UnservedColumn[] {
  const existing = careNeeds(columns.campus, NOTHING, columns.charges);
  const unserved: UnservedColumn[] = [];
  for (const season of plannedSeasons(columns.campus.calendar)) {
    const here = care === 'allowed' ? addUnserved(draft, columns, season) : [];
    unserved.push(...here);
    const needs = existing[season.index];
    if (needs) addSeasonRows({ draft, columns, season, existing: needs, unserved: here });
  }
  return unserved;
}

const NOTHING = { placements: [], hires: [], workDays: [], purchases: [] };

function addUnserved(draft: ModelDraft, columns: Columns, season: SeasonInstance): UnservedColumn[] {
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
}

function addSeasonRows(at: SeasonModel): void {
  const asked = [...installAsked(at), ...careAsked(at)];
  const sources = seasonSources(at);
  for (const classes of closedSubsets(TASK_CLASSES, sources.map((s) => s.tasks))) {
    addSubsetRow({ at, asked, sources, classes });
  }
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

interface SubsetRow {
  readonly at: SeasonModel;
  readonly asked: readonly Asked[];
  readonly sources: readonly Source[];
  readonly classes: ReadonlySet<TaskClass>;
}

function addSubsetRow({ at, asked, sources, classes }: SubsetRow): void {
  const { draft, columns, season, existing, unserved } = at;
  const inSet = (hours: Readonly<Partial<Record<TaskClass, number>>>) =>
    [...classes].reduce((sum, c) => sum + (hours[c] ?? 0), 0);
  const terms = asked.map((a) => ({ ...a, coefficient: inSet(a.hours) })).filter((a) => a.coefficient > 0);
  const serving = sources.filter((s) => s.tasks.some((t) => classes.has(t)));
  const room = serving.reduce((sum, s) => sum + s.fixed, 0) - inSet(existing) / FINE_PARTS;
  const leaders = classes.has('supervise') ? leaderTerms(columns, season) : [];
  const most = Math.min(mostAsked(terms), mostBySite(columns, season, classes));
  if (most + mostLeaders(leaders, columns) <= room) return;
  draft.addRow({
    label: `labor ${[...classes].join('+')} ${seasonLabel(columns.campus.calendar, season)}`,
    terms: [
      ...terms,
      ...leaders,
      ...serving.flatMap((s) => s.terms).map((t) => ({ ...t, coefficient: -t.coefficient })),
      ...unserved.filter((u) => classes.has(u.taskClass)).map(({ variable }) => ({ variable, coefficient: -1 })),
    ],
    atMost: room,
  });
}

function mostAsked(asked: readonly { most: number; coefficient: number }[]): number {
  return asked.reduce((sum, a) => sum + a.most * a.coefficient, 0);
}

/** The most that all sites together can ask for: each site once, at its heaviest life. */
function mostBySite(columns: Columns, season: SeasonInstance, classes: ReadonlySet<TaskClass>): number {
  const worst = new Map<string, number>();
  for (const l of columns.lifecycles) {
    const age = ageInSeason(columns.campus.calendar, l.life, season.index);
    let hours = 0;
    for (const c of CARE_CLASSES) {
      if (classes.has(c)) hours += (l.charges.areaSqFt * l.charges.profile.care(c, age, season.order)) / FINE_PARTS;
    }
    if (season.index === l.life.prepared && classes.has('prepare')) hours += l.charges.prepareHours / 100;
    if (season.index === l.life.planted && classes.has('plant')) hours += l.charges.plantHours / 100;
    if (hours > (worst.get(l.site) ?? 0)) worst.set(l.site, hours);
  }
  return [...worst.values()].reduce((a, b) => a + b, 0);
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

function installAsked({ columns, season }: SeasonModel): Asked[] {
  return columns.lifecycles.flatMap(({ variable, life, charges }) => {
    if (season.index === life.prepared) {
      return [{ variable, most: 1, hours: { prepare: charges.prepareHours / 100 } }];
    }
    if (season.index !== life.planted) return [];
    return [{ variable, most: 1, hours: { plant: charges.plantHours / 100 } }];
  });
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
    .map((w) => ({ tasks: w.day.tasks, fixed: 0, terms: [{ variable: w.variable, coefficient: w.day.hoursEach / 100 }] }));
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
          coefficient: positionHours(columns.campus.calendar, position, { startYear: h.yearIndex, season }) / 100,
        }))
        .filter((t) => t.coefficient > 0),
    }))
    .filter((s) => s.terms.length > 0);
}
