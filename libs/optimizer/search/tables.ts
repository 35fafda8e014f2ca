import {
  plannedSeasons,
  plannedYears,
  seasonInstance,
  yearIndexOf,
  type SeasonInstance,
} from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { TASK_CLASSES, type TaskClass } from '#domain/labor.js';
import { buildBills, careCosts } from '#estimating/plan-needs/money-needs.js';
import { topDressSeasons } from '#estimating/plan-needs/compost-needs.js';
import { frontingsOf, type Fronting } from '#estimating/purses/frontings.js';
import { pursesOf, type Payable, type Purse } from '#estimating/purses/purses.js';
import { ageInSeason } from '#estimating/site-charges/life.js';
import {
  CARE_CLASSES,
  FINE_PER_HUNDREDTH,
  hundredthsFor,
} from '#estimating/site-charges/type-profile.js';
import type { Lifecycle } from '#rules/columns.js';
import { sinkKeyer, type SinkKey } from '#rules/funds/sinks.js';
import { firstOpenYear, frozenHires } from '#rules/stability/frozen.js';
import type { Ground } from '../columns/add-columns.js';
import { positionTable, type PositionTable } from './position-table.js';

export const CLASS_COUNT = TASK_CLASSES.length;

/** What one life asks for, as flat arrays: added to a plan's totals and taken off again. */
export interface LifeCharges {
  readonly lifecycle: Lifecycle;
  /** Where it wants hours, at [season x classes], and how many, in fine parts. */
  readonly hoursAt: Int32Array;
  readonly hours: Float64Array;
  /** Seasons in which it wants hours, and how many of all classes at most, in hundredths. */
  readonly seasonsAt: Int32Array;
  readonly most: Float64Array;
  /** Compost by season, fine parts of a cubic yard: all of it, and what of it must be certified. */
  readonly compost: readonly (readonly [season: number, all: number, certified: number])[];
  /** Dollars by sink and year, in cents. */
  readonly money: readonly (readonly [sink: number, year: number, amount: number])[];
}

/** Positions of one type that start in a frozen year, by number and year index. */
export interface FrozenHire {
  readonly position: number;
  readonly startYear: number;
  readonly count: number;
}

/** Everything about a campus that a search looks up again and again. */
export interface Tables {
  readonly ground: Ground;
  readonly seasons: number;
  readonly years: number;
  readonly purses: readonly Purse[];
  readonly frontings: readonly Fronting[];
  readonly sinkKeys: readonly SinkKey[];
  readonly positions: readonly PositionTable[];
  readonly seasonList: readonly SeasonInstance[];
  /** Hires of a published plan's frozen years; every state has them. */
  readonly frozenHires: readonly FrozenHire[];
  /** First year index that is not frozen. */
  readonly firstOpenYear: number;
  sinkOf(cost: Payable): number;
  chargesOf(lifecycle: Lifecycle): LifeCharges;
}

export function tablesOf(ground: Ground): Tables {
  const { campus } = ground;
  const purses = pursesOf(campus);
  const frontings = frontingsOf(campus, purses);
  const keyOf = sinkKeyer({ purses, frontings });
  const sinkKeys: SinkKey[] = [];
  const sinkOf = (cost: Payable): number => {
    const key = keyOf(cost);
    const found = sinkKeys.indexOf(key);
    return found >= 0 ? found : sinkKeys.push(key) - 1;
  };
  for (const l of ground.lifecycles) {
    sinkOf({ line: 'build', site: l.site, buildType: l.buildType });
    sinkOf({ line: 'care', site: l.site, buildType: l.buildType });
  }
  for (const s of campus.existing) sinkOf({ line: 'care', site: s.id, buildType: s.buildType });
  for (const line of ['positions', 'compost', 'standing'] as const) sinkOf({ line });
  const kept = new Map<Lifecycle, LifeCharges>();
  return {
    ground,
    seasons: plannedSeasons(campus.calendar).length,
    seasonList: plannedSeasons(campus.calendar),
    years: plannedYears(campus.calendar),
    frozenHires: frozenHires(campus).map((h) => ({
      position: campus.positions.findIndex((p) => p.id === h.position),
      startYear: yearIndexOf(campus.calendar, h.year),
      count: h.count,
    })),
    firstOpenYear: firstOpenYear(campus),
    positions: campus.positions.map((p) => positionTable(campus, p)),
    purses,
    frontings,
    sinkKeys,
    sinkOf,
    chargesOf(lifecycle) {
      const found = kept.get(lifecycle);
      if (found) return found;
      const made = lifeCharges(campus, lifecycle, sinkOf);
      kept.set(lifecycle, made);
      return made;
    },
  };
}

function lifeCharges(
  campus: Campus,
  lifecycle: Lifecycle,
  sinkOf: (cost: Payable) => number,
): LifeCharges {
  return {
    lifecycle,
    ...lifeHours(campus, lifecycle),
    compost: lifeCompost(campus, lifecycle),
    money: lifeMoney(campus, lifecycle, sinkOf),
  };
}

type LifeHours = Pick<LifeCharges, 'hoursAt' | 'hours' | 'seasonsAt' | 'most'>;

function lifeHours(campus: Campus, { parts }: Lifecycle): LifeHours {
  const seasons = plannedSeasons(campus.calendar).length;
  const wanted = new Map<number, number>();
  const add = (season: number, taskClass: TaskClass, amount: number) => {
    if (amount === 0 || season >= seasons) return;
    const at = season * CLASS_COUNT + TASK_CLASSES.indexOf(taskClass);
    wanted.set(at, (wanted.get(at) ?? 0) + amount);
  };
  for (const { life, charges } of parts) {
    if (life.prepared !== undefined)
      add(life.prepared, 'prepare', charges.prepareHours * FINE_PER_HUNDREDTH);
    add(life.planted, 'plant', charges.plantHours * FINE_PER_HUNDREDTH);
    for (let season = life.planted; season < Math.min(seasons, life.ends); season++) {
      const age = ageInSeason(campus.calendar, life, season);
      const { order } = seasonInstance(campus.calendar, season);
      for (const c of CARE_CLASSES)
        add(season, c, charges.areaSqFt * charges.profile.care(c, age, order));
    }
  }
  const most = new Map<number, number>();
  for (const [at, fine] of wanted) {
    const season = Math.floor(at / CLASS_COUNT);
    most.set(season, (most.get(season) ?? 0) + hundredthsFor(fine));
  }
  return {
    hoursAt: Int32Array.from(wanted.keys()),
    hours: Float64Array.from(wanted.values()),
    seasonsAt: Int32Array.from(most.keys()),
    most: Float64Array.from(most.values()),
  };
}

function lifeCompost(campus: Campus, { parts }: Lifecycle): [number, number, number][] {
  return parts.flatMap(({ life, charges }) => {
    const { topDress, compostGrade } = charges.profile;
    const used = (season: number, all: number): [number, number, number] => [
      season,
      all,
      compostGrade === 'certified' ? all : 0,
    ];
    const dressed = topDressSeasons(campus, life).map((s) => used(s, charges.areaSqFt * topDress));
    if (life.prepared === undefined) return dressed;
    return [used(life.prepared, charges.buildCompost * FINE_PER_HUNDREDTH), ...dressed];
  });
}

function lifeMoney(
  campus: Campus,
  { site, buildType, parts }: Lifecycle,
  sinkOf: (cost: Payable) => number,
): [number, number, number][] {
  const build = sinkOf({ line: 'build', site, buildType });
  const care = sinkOf({ line: 'care', site, buildType });
  return [
    ...buildBills(campus, parts).map(({ yearIndex, amount }): [number, number, number] => [
      build,
      yearIndex,
      amount,
    ]),
    ...careCosts(campus, parts).flatMap((amount, year): [number, number, number][] =>
      amount === 0 ? [] : [[care, year, amount]],
    ),
  ];
}
