import {
  plannedSeasons,
  plannedYears,
  yearIndexOf,
  type SeasonInstance,
} from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { placementKey, type Placement, type Plan } from '#domain/plan.js';
import { positionHours } from '#estimating/season-supply/positions.js';
import { poolHours } from '#estimating/season-supply/sources.js';
import { positionCostIn, standingCost, compostPrice } from '#estimating/plan-needs/money-needs.js';
import { campusCharges, type CampusCharges } from '#estimating/site-charges/campus-charges.js';
import type { Faced, Policy } from '../order.js';
import type { Odds } from '../sampling/odds.js';
import { basisOf, type Basis } from '../replan/basis.js';
import { headOf } from '../sampling/world.js';
import { piecesOf, placedPieces, type Piece } from './pieces.js';
import { bitsOf } from './season-labor.js';
import { budgetOf, type Budget } from './wallet.js';

/** People who give hours: a pool, or one holder of a position. */
export interface Worker {
  /** Name in a world by which absence is looked up; left out where nobody leaves. */
  readonly person?: string;
  readonly mask: number;
  /** Hundredths of an hour by season. */
  readonly hours: Float64Array;
  /** Cost by year in dollars of the plan, in cents. Left out: it is paid with the standing costs. */
  readonly cost?: Float64Array;
}

/** Work days of a kind as the plan holds them. */
export interface HeldDays {
  readonly mask: number;
  readonly hoursEach: number;
  readonly leaderHoursEach: number;
  /** Events by season; 0 outside the season of the kind. */
  readonly count: Int32Array;
}

/** A plan on its campus, worked out once and met by every future. */
export interface Setting {
  readonly campus: Campus;
  readonly plan: Plan;
  readonly odds: Odds;
  readonly seasons: readonly SeasonInstance[];
  readonly years: number;
  readonly pieces: readonly Piece[];
  /** The pieces of a placement that the plan does not hold. */
  readonly piecesFor: (placement: Placement) => readonly Piece[];
  /** Pools, then those whom the plan hires, by their first year. */
  readonly workers: readonly Worker[];
  /** How many of them are pools. */
  readonly pools: number;
  /** One who is hired for a position (index) and starts in a year (index), as the so-manieth of its kind. */
  readonly hiredFor: (position: number, startYear: number, place: number) => Worker;
  /** What the plan is planned anew from; left out where it is kept. */
  readonly basis?: Basis;
  /** In the order of the campus file. */
  readonly workDays: readonly HeldDays[];
  readonly budget: Budget;
  /** Cents by year, in dollars of the plan; wages grow with the world, other costs with supplies. */
  readonly standing: Readonly<Record<'wages' | 'supplies' | 'construction', Float64Array>>;
  readonly compostPrice: Float64Array;
  /** Whole cubic yards that the plan buys, by season. */
  readonly purchases: Float64Array;
}

/** Works out a plan on its campus, and with `replan` what it is made anew from. */
export function settingOf(
  { campus, plan, policy }: Faced & { readonly policy: Policy },
  odds: Odds,
): Setting {
  const charges = campusCharges(campus);
  const seasons = plannedSeasons(campus.calendar);
  const years = plannedYears(campus.calendar);
  const hiredFor = keptWorkers(campus, seasons);
  const purchases = new Float64Array(seasons.length);
  for (const { season, cubicYards } of plan.decisions.purchases) {
    purchases[season] = (purchases[season] ?? 0) + cubicYards;
  }
  const byYear = (of: (year: number) => number) =>
    Float64Array.from({ length: years }, (_, year) => of(year));
  const standing = (kind: 'wages' | 'supplies' | 'construction') => {
    const standingCosts = campus.standingCosts.filter((c) => c.escalation === kind);
    return byYear((year) => standingCost({ ...campus, standingCosts }, year));
  };
  return {
    ...{ campus, plan, odds, seasons, years, purchases },
    pieces: piecesOf(campus, plan.decisions, charges),
    piecesFor: keptPieces(campus, charges),
    workers: [...poolWorkers(campus, seasons), ...hiredWorkers(campus, plan, hiredFor)],
    pools: campus.pools.length,
    hiredFor,
    ...(policy === 'replan' ? { basis: basisOf(campus, plan, charges) } : {}),
    workDays: heldDays(campus, plan, seasons),
    budget: budgetOf(campus, plan),
    standing: {
      wages: standing('wages'),
      supplies: standing('supplies'),
      construction: standing('construction'),
    },
    compostPrice: byYear((year) => compostPrice(campus, year)),
  };
}

/** Works out pieces as they are asked for, and keeps them. */
function keptPieces(campus: Campus, charges: CampusCharges): Setting['piecesFor'] {
  const kept = new Map<string, readonly Piece[]>();
  return (placement) => {
    const key = placementKey(placement);
    const made = kept.get(key) ?? placedPieces(campus, { placement, place: -1 }, charges);
    kept.set(key, made);
    return made;
  };
}

function poolWorkers(campus: Campus, seasons: readonly SeasonInstance[]): Worker[] {
  return campus.pools.map((pool) => ({
    mask: bitsOf(pool.tasks),
    hours: Float64Array.from(seasons, (season) => poolHours(pool, season)),
    ...(pool.kind === 'staff' ? { person: pool.id } : {}),
  }));
}

/** One worker for each position filled, those who start first before the others. */
function hiredWorkers(campus: Campus, plan: Plan, hiredFor: Setting['hiredFor']): Worker[] {
  const places = new Map<number, number>();
  const inOrder = [...plan.decisions.hires].sort((a, b) => a.year - b.year);
  return inOrder.flatMap((hire) => {
    const position = campus.positions.findIndex((p) => p.id === hire.position);
    const startYear = yearIndexOf(campus.calendar, hire.year);
    return Array.from({ length: hire.count }, () => {
      const place = places.get(position) ?? 0;
      places.set(position, place + 1);
      return hiredFor(position, startYear, place);
    });
  });
}

/** Works out people who are hired as they are asked for, and keeps them. */
function keptWorkers(campus: Campus, seasons: readonly SeasonInstance[]): Setting['hiredFor'] {
  const kept = new Map<string, Worker>();
  return (position, startYear, place) => {
    const key = `${position} ${startYear} ${place}`;
    const made = kept.get(key) ?? hiredWorker(campus, seasons, { position, startYear, place });
    kept.set(key, made);
    return made;
  };
}

function hiredWorker(
  campus: Campus,
  seasons: readonly SeasonInstance[],
  of: { readonly position: number; readonly startYear: number; readonly place: number },
): Worker {
  const { startYear, place } = of;
  const position = campus.positions[of.position];
  if (!position) throw new RangeError(`no position type at ${of.position} in ${campus.name}`);
  const leaves = position.term === 'recurring' && place < position.most;
  return {
    mask: bitsOf(position.tasks),
    hours: Float64Array.from(seasons, (season) =>
      positionHours(campus.calendar, position, { startYear, season }),
    ),
    cost: Float64Array.from({ length: plannedYears(campus.calendar) }, (_, yearIndex) =>
      positionCostIn({ campus, position, startYear, yearIndex }),
    ),
    ...(leaves ? { person: headOf(position.id, place) } : {}),
  };
}

function heldDays(campus: Campus, plan: Plan, seasons: readonly SeasonInstance[]): HeldDays[] {
  return campus.workDays.map((day) => {
    const held = new Map<number, number>();
    for (const { workDay, year, count } of plan.decisions.workDays) {
      if (workDay === day.id) held.set(year, (held.get(year) ?? 0) + count);
    }
    return {
      mask: bitsOf(day.tasks),
      hoursEach: day.hoursEach,
      leaderHoursEach: day.leaderHoursEach,
      count: Int32Array.from(seasons, ({ season, year }) =>
        season.id === day.season ? (held.get(year) ?? 0) : 0,
      ),
    };
  });
}
