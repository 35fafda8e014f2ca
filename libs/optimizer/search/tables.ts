import {
  plannedSeasons,
  plannedYears,
  yearIndexOf,
  type SeasonInstance,
} from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { frontingsOf, type Fronting } from '#estimating/purses/frontings.js';
import { pursesOf, type Payable, type Purse } from '#estimating/purses/purses.js';
import type { Lifecycle } from '#rules/columns.js';
import { sinkKeyer, type SinkKey } from '#rules/funds/sinks.js';
import { firstOpenYear, frozenHires } from '#rules/stability/frozen.js';
import type { Ground } from '../columns/add-columns.js';
import { keptCharges, type LifeCharges } from './life-charges.js';
import { positionTable, type PositionTable } from './position-table.js';

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
  /** Compost made by season, hundredths of a cubic yard: of both grades, and certified. */
  readonly made: { readonly all: Float64Array; readonly certified: Float64Array };
  /** Hires of a published plan's frozen years; every state has them. */
  readonly frozenHires: readonly FrozenHire[];
  /** First year index that is not frozen. */
  readonly firstOpenYear: number;
  /** Sinks of what no site is billed for. */
  readonly sinks: Readonly<Record<'positions' | 'compost' | 'standing', number>>;
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
  const sinks = {
    positions: sinkOf({ line: 'positions' }),
    compost: sinkOf({ line: 'compost' }),
    standing: sinkOf({ line: 'standing' }),
  };
  const years = plannedYears(campus.calendar);
  const seasonList = plannedSeasons(campus.calendar);
  return {
    ground,
    seasons: seasonList.length,
    seasonList,
    made: compostMade(campus, seasonList),
    years,
    frozenHires: frozenHires(campus).map((h) => ({
      position: campus.positions.findIndex((p) => p.id === h.position),
      startYear: yearIndexOf(campus.calendar, h.year),
      count: h.count,
    })),
    firstOpenYear: firstOpenYear(campus),
    positions: campus.positions.map((p) => positionTable(campus, p, sinks.positions)),
    purses,
    frontings,
    sinkKeys,
    sinks,
    sinkOf,
    chargesOf: keptCharges({ campus, years, sinkOf }),
  };
}

function compostMade({ compost }: Campus, seasons: readonly SeasonInstance[]): Tables['made'] {
  const { made, other } = compost;
  return {
    all: Float64Array.from(
      seasons,
      ({ season: { id } }) => (made[id] ?? 0) + (other?.made[id] ?? 0),
    ),
    certified: Float64Array.from(seasons, ({ season: { id } }) => made[id] ?? 0),
  };
}
