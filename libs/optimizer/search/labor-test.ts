import type { SeasonInstance } from '#domain/calendar.js';
import { TASK_CLASSES, type TaskClass } from '#domain/labor.js';
import { poolHours } from '#estimating/season-supply/sources.js';
import { hundredthsFor } from '#estimating/site-charges/type-profile.js';
import { closedSubsets, type SourceTasks } from '#rules/labor/closed-subsets.js';
import type { Ground } from '../columns/add-columns.js';
import { CLASS_COUNT, type Tables } from './tables.js';

/** Hours missing in a season, and the classes that miss them. */
export interface LaborGap {
  readonly season: number;
  /** Hundredths of an hour, above 0. */
  readonly hours: number;
  readonly classes: number;
}

/** Tells by subset conditions whether a season's hours can be served, without allotting them. */
export interface LaborTest {
  /** Hours missing in one season: the largest excess of any set of classes. `undefined` where none. */
  gap(needs: Float64Array, workDays: Int32Array, season: number): LaborGap | undefined;
  /** Adds or takes off the hours of positions. */
  hire(position: number, startYear: number, count: number): void;
}

interface Row {
  readonly classes: number;
  /** Hours of pools, hundredths. */
  readonly fixed: number;
  /** Hours per work day of each kind, hundredths. */
  readonly dayHours: readonly (readonly [day: number, hours: number])[];
  /** Positions that may serve it, as a bit set. */
  readonly positions: number;
}

export function laborTest(tables: Tables): LaborTest {
  const { seasonList, ground } = tables;
  const rows = seasonList.map((season) => seasonRows(ground, season));
  const hired = tables.positions.map(() => new Int32Array(tables.seasons));
  return {
    hire(position, startYear, count) {
      const table = tables.positions[position];
      const held = hired[position];
      if (!table || !held) throw new RangeError(`no position type at ${position}`);
      for (let season = 0; season < held.length; season++) {
        held[season] = (held[season] ?? 0) + count * table.hours(startYear, season);
      }
    },
    gap(needs, workDays, season) {
      let worst: LaborGap | undefined;
      for (const row of rows[season] ?? []) {
        const over = excess({ row, needs, workDays, season, hired });
        if (over > (worst?.hours ?? 0)) worst = { season, hours: over, classes: row.classes };
      }
      return worst;
    },
  };
}

function excess(of: {
  row: Row;
  needs: Float64Array;
  workDays: Int32Array;
  season: number;
  hired: readonly Int32Array[];
}): number {
  const { row, needs, workDays, season, hired } = of;
  let over = -row.fixed;
  for (let c = 0; c < CLASS_COUNT; c++) {
    if (row.classes & (1 << c)) over += hundredthsFor(needs[season * CLASS_COUNT + c] ?? 0);
  }
  for (const [day, hours] of row.dayHours) over -= hours * (workDays[day] ?? 0);
  for (let p = 0; p < hired.length; p++) {
    if (row.positions & (1 << p)) over -= hired[p]?.[season] ?? 0;
  }
  return over;
}

function seasonRows({ campus }: Ground, season: SeasonInstance): Row[] {
  const pools = campus.pools
    .map((p) => ({ tasks: p.tasks, hours: poolHours(p, season) }))
    .filter((p) => p.hours > 0);
  const days = campus.workDays
    .map((d, i) => ({ d, i }))
    .filter(({ d }) => d.season === season.season.id);
  const sources: SourceTasks[] = [
    ...pools.map((p) => p.tasks),
    ...days.map(({ d }) => d.tasks),
    ...campus.positions.map((p) => p.tasks),
  ];
  return closedSubsets(TASK_CLASSES, sources).map((classes) => {
    const serves = (tasks: readonly TaskClass[]) => tasks.some((t) => classes.has(t));
    return {
      classes: TASK_CLASSES.reduce((mask, c, i) => (classes.has(c) ? mask | (1 << i) : mask), 0),
      fixed: pools.filter((p) => serves(p.tasks)).reduce((sum, p) => sum + p.hours, 0),
      dayHours: days
        .filter(({ d }) => serves(d.tasks))
        .map(({ d, i }): [number, number] => [i, d.hoursEach]),
      positions: campus.positions.reduce(
        (mask, p, i) => (serves(p.tasks) ? mask | (1 << i) : mask),
        0,
      ),
    };
  });
}
