import type { SeasonInstance } from '#domain/calendar.js';
import { TASK_CLASSES, type TaskClass } from '#domain/labor.js';
import { poolHours } from '#estimating/season-supply/sources.js';
import { hundredthsFor } from '#estimating/site-charges/type-profile.js';
import { closedSubsets, type SourceTasks } from '#rules/labor/closed-subsets.js';
import type { Ground } from '../columns/add-columns.js';
import { CLASS_COUNT } from './life-charges.js';
import type { Tables } from './tables.js';

/** Hours missing in a season, and the classes that miss them. */
export interface LaborGap {
  readonly season: number;
  /** Hundredths of an hour; at or below 0: what may still be asked of any set of classes. */
  readonly hours: number;
  readonly classes: number;
}

/** Tells by subset conditions whether a season's hours can be served, without allotting them. */
export interface LaborTest {
  /** Hours missing in one season, of the set of classes that misses most. */
  worst(needs: Float64Array, season: number): LaborGap;
  /** Adds or takes off the hours of positions. */
  hire(position: number, startYear: number, count: number): void;
}

/** The condition of one set of classes in one season. */
interface Row {
  readonly classes: number;
  /** Hours of pools and of the work days that are held, hundredths. */
  readonly fixed: number;
  /** Positions that may serve it. */
  readonly positions: readonly number[];
}

/**
 * Conditions as flat arrays, with what the people of each season give kept up to date.
 *
 * @param workDays work days of each kind held in each season
 */
export function laborTest(tables: Tables, workDays: readonly Int32Array[]): LaborTest {
  const { seasonList, ground } = tables;
  const perSeason = seasonList.map((season) =>
    seasonRows(ground, season, workDays[season.index] ?? new Int32Array()),
  );
  const starts = new Int32Array(seasonList.length + 1);
  perSeason.forEach((rows, s) => (starts[s + 1] = (starts[s] ?? 0) + rows.length));
  const rows = perSeason.flat();
  const masks = Int32Array.from(rows, (r) => r.classes);
  const classes = Int32Array.from(rows.flatMap((r) => classesOf(r.classes)));
  const ofRow = new Int32Array(rows.length + 1);
  rows.forEach((r, i) => (ofRow[i + 1] = (ofRow[i] ?? 0) + classesOf(r.classes).length));
  const supply = Float64Array.from(rows, (r) => r.fixed);
  const rowsOf = tables.positions.map((_, p) => rowsBySeason(perSeason, p));
  const whole = new Float64Array(CLASS_COUNT);
  const worst = (needs: Float64Array, season: number): LaborGap => {
    for (let c = 0; c < CLASS_COUNT; c++)
      whole[c] = hundredthsFor(needs[season * CLASS_COUNT + c] ?? 0);
    let hours = -Infinity;
    let at = -1;
    const end = starts[season + 1] ?? 0;
    for (let row = starts[season] ?? 0; row < end; row++) {
      let over = -(supply[row] ?? 0);
      for (let i = ofRow[row] ?? 0; i < (ofRow[row + 1] ?? 0); i++)
        over += whole[classes[i] ?? 0] ?? 0;
      if (over <= hours) continue;
      hours = over;
      at = row;
    }
    return { season, hours, classes: masks[at] ?? 0 };
  };
  return {
    worst,
    hire(position, startYear, count) {
      const table = tables.positions[position];
      const served = rowsOf[position];
      if (!table || !served) throw new RangeError(`no position type at ${position}`);
      const hours = table.hours(startYear);
      const end = table.endSeason(startYear);
      for (let season = table.firstSeason(startYear); season < end; season++) {
        const more = count * (hours[season] ?? 0);
        const last = served.starts[season + 1] ?? 0;
        for (let i = served.starts[season] ?? 0; i < last; i++) {
          const row = served.rows[i] ?? 0;
          supply[row] = (supply[row] ?? 0) + more;
        }
      }
    },
  };
}

function classesOf(mask: number): number[] {
  return TASK_CLASSES.flatMap((_, c) => (mask & (1 << c) ? [c] : []));
}

/** Rows that a position serves, side by side season after season. */
function rowsBySeason(perSeason: readonly (readonly Row[])[], position: number) {
  const rows: number[] = [];
  const starts = [0];
  let row = 0;
  for (const inSeason of perSeason) {
    for (const { positions } of inSeason) {
      if (positions.includes(position)) rows.push(row);
      row += 1;
    }
    starts.push(rows.length);
  }
  return { rows: Int32Array.from(rows), starts: Int32Array.from(starts) };
}

function seasonRows({ campus }: Ground, season: SeasonInstance, held: Int32Array): Row[] {
  const pools = campus.pools
    .map((p) => ({ tasks: p.tasks, hours: poolHours(p, season) }))
    .filter((p) => p.hours > 0);
  const days = campus.workDays
    .map((d, i) => ({ tasks: d.tasks, hours: d.hoursEach * (held[i] ?? 0), season: d.season }))
    .filter((d) => d.season === season.season.id);
  const sources: SourceTasks[] = [
    ...pools.map((p) => p.tasks),
    ...days.map((d) => d.tasks),
    ...campus.positions.map((p) => p.tasks),
  ];
  return closedSubsets(TASK_CLASSES, sources).map((classes) => {
    const serves = ({ tasks }: { readonly tasks: readonly TaskClass[] }) =>
      tasks.some((t) => classes.has(t));
    return {
      classes: TASK_CLASSES.reduce((mask, c, i) => (classes.has(c) ? mask | (1 << i) : mask), 0),
      fixed: [...pools, ...days].filter(serves).reduce((sum, s) => sum + s.hours, 0),
      positions: campus.positions.flatMap((p, i) => (serves(p) ? [i] : [])),
    };
  });
}
