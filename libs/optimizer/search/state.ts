import { plannedSeasons, seasonInstance, yearAt } from '#domain/calendar.js';
import { TASK_CLASSES, type TaskClass } from '#domain/labor.js';
import { gradeSupply } from '#domain/compost.js';
import {
  NO_DECISIONS,
  type CompostPurchase,
  type Decisions,
  type Hire,
  type Placement,
} from '#domain/plan.js';
import { topDressNeeds } from '#estimating/plan-needs/compost-needs.js';
import { careNeeds } from '#estimating/plan-needs/labor-needs.js';
import { compostPrice, moneyNeeds } from '#estimating/plan-needs/money-needs.js';
import {
  CARE_CLASSES,
  FINE_PER_HUNDREDTH,
  hundredthsFor,
} from '#estimating/site-charges/type-profile.js';
import type { Lifecycle } from '#rules/columns.js';
import { sortDecisions } from '../allocate/complete-plan.js';
import { purchaseOf, yardsToBuy } from '../allocate/compost.js';
import { heldWorkDays } from './held-work-days.js';
import { laborTest, type LaborTest } from './labor-test.js';
import { moneyTest } from './fronted-test.js';
import type { MoneyTest } from './money-test.js';
import { addAmounts, addHours, CLASS_COUNT, type Amounts } from './life-charges.js';
import type { Tables } from './tables.js';

/** A plan under construction: its decisions, and their totals kept up to date in whole units. */
export interface SearchState {
  readonly tables: Tables;
  readonly labor: LaborTest;
  readonly money: MoneyTest;
  /** Hours wanted at [season x classes], in fine parts. */
  readonly needs: Float64Array;
  /**
   * Hundredths of an hour that each season has to spare for any task, at least; below 0: not known. Kept
   * low rather than exact, so that most seasons need no look at all when a site is added.
   */
  readonly room: Float64Array;
  /** Compost that builds and top-dressing take by season, in fine parts. */
  readonly compost: Float64Array;
  /** What of it must be certified. */
  readonly certified: Float64Array;
  /** Cents at [sink x years + year], purchases of compost left out. */
  readonly costs: Float64Array;
  /** Work days of each kind by season. */
  readonly workDays: readonly Int32Array[];
  /** Positions at [position][start year]. */
  readonly hires: readonly Int32Array[];
  readonly lives: Set<Lifecycle>;
}

/** A state with the existing sites and nothing decided but the work days and the frozen hires. */
export function emptyState(tables: Tables): SearchState {
  const { ground, seasons, years } = tables;
  const { campus, charges } = ground;
  const workDays = heldWorkDays(campus);
  const dressed = topDressNeeds(campus, NO_DECISIONS, charges);
  const state: SearchState = {
    tables,
    labor: laborTest(tables, workDays),
    money: moneyTest(tables),
    needs: new Float64Array(seasons * CLASS_COUNT),
    room: new Float64Array(seasons).fill(-1),
    compost: Float64Array.from(dressed.all),
    certified: Float64Array.from(dressed.certified),
    costs: new Float64Array(tables.sinkKeys.length * years),
    workDays,
    hires: campus.positions.map(() => new Int32Array(years)),
    lives: new Set(),
  };
  careNeeds(campus, NO_DECISIONS, charges).forEach((fine, s) => {
    const at = (c: TaskClass) => s * CLASS_COUNT + TASK_CLASSES.indexOf(c);
    for (const c of CARE_CLASSES) state.needs[at(c)] = fine[c];
    const leaders = campus.workDays.reduce(
      (sum, day, d) => sum + day.leaderHoursEach * (workDays[s]?.[d] ?? 0),
      0,
    );
    state.needs[at('supervise')] = leaders * FINE_PER_HUNDREDTH;
  });
  const base = moneyNeeds(campus, NO_DECISIONS, charges);
  base.care.forEach((c) =>
    addCost(state, tables.sinkOf({ ...c, line: 'care' }) * years + c.yearIndex, c.amount),
  );
  const standing = tables.sinks.standing * years;
  base.standing.forEach((amount, year) => addCost(state, standing + year, amount));
  for (const hire of tables.frozenHires) applyHire(state, hire);
  return state;
}

function addCost(state: SearchState, due: number, amount: number): void {
  state.costs[due] = (state.costs[due] ?? 0) + amount;
  state.money.touch(due);
}

function owe(state: SearchState, bills: Amounts, times: number): void {
  addAmounts(state.costs, bills, times);
  for (const due of bills.at) state.money.touch(due);
}

/** Adds a life (sign 1) or takes it off (sign -1). */
export function applyLife(state: SearchState, lifecycle: Lifecycle, sign: 1 | -1): void {
  const charges = state.tables.chargesOf(lifecycle);
  addHours(state, charges, sign);
  addAmounts(state.compost, charges.compost, sign);
  addAmounts(state.certified, charges.certified, sign);
  owe(state, charges.bills, sign);
  if (sign === 1) state.lives.add(lifecycle);
  else state.lives.delete(lifecycle);
}

/** Adds `count` positions (negative: takes them off) from a start year on. */
export function applyHire(
  state: SearchState,
  hire: { readonly position: number; readonly startYear: number; readonly count: number },
): void {
  const { position, startYear, count } = hire;
  const table = state.tables.positions[position];
  const held = state.hires[position];
  if (!table || !held) throw new RangeError(`no position type at ${position}`);
  held[startYear] = (held[startYear] ?? 0) + count;
  state.labor.hire(position, startYear, count);
  if (count < 0) state.room.fill(-1, table.firstSeason(startYear), table.endSeason(startYear));
  owe(state, table.bills(startYear), count);
}

/** Whole cubic yards to buy in each season, as late as possible; `undefined` where the limit is too low. */
export function purchasesOf(state: SearchState): CompostPurchase[] | undefined {
  const { compost: supply } = state.tables.ground.campus;
  const { made, seasons } = state.tables;
  const purchases: CompostPurchase[] = [];
  let certified: number = supply.openingStock;
  let all = certified + (supply.other?.openingStock ?? 0);
  for (let season = firstSeason(state); season < seasons; season++) {
    all += (made.all[season] ?? 0) - hundredthsFor(state.compost[season] ?? 0);
    certified += (made.certified[season] ?? 0) - hundredthsFor(state.certified[season] ?? 0);
    if (all < 0 || certified < 0) {
      for (const { grade, yards } of yardsToBuy(supply, { all, certified })) {
        if (yards > gradeSupply(supply, grade).mostBoughtPerSeason) return undefined;
        purchases.push(purchaseOf(season, grade, yards));
        all += yards * 100;
        if (grade === 'certified') certified += yards * 100;
      }
    }
    all = Math.min(all, supply.yard);
    certified = Math.min(certified, all);
  }
  return purchases;
}

/** First season to come (index): a forecast has fewer seasons than a plan. */
export function firstSeason({ tables }: SearchState): number {
  return tables.seasonList[0]?.index ?? tables.seasons;
}

/** True where all costs, purchases included, can be paid. */
export function allPaid(state: SearchState, purchases: readonly CompostPurchase[]): boolean {
  if (purchases.length === 0) return state.money.paid(state.costs);
  addPurchases(state, purchases, 1);
  const paid = state.money.paid(state.costs);
  addPurchases(state, purchases, -1);
  return paid;
}

function addPurchases(
  state: SearchState,
  purchases: readonly CompostPurchase[],
  sign: 1 | -1,
): void {
  const { campus } = state.tables.ground;
  const sink = state.tables.sinks.compost;
  for (const { season, cubicYards, grade } of purchases) {
    const year = seasonInstance(campus.calendar, season).yearIndex;
    const amount = sign * cubicYards * compostPrice(campus, year, grade);
    addCost(state, sink * state.tables.years + year, amount);
  }
}

export function placementsOf(state: SearchState): Placement[] {
  return Array.from(state.lives, (l) => l.placement);
}

export function hiresOf({ hires, tables }: SearchState): Hire[] {
  const { campus } = tables.ground;
  const made: Hire[] = [];
  hires.forEach((byYear, p) => {
    byYear.forEach((count, year) => {
      const position = campus.positions[p]?.id ?? '';
      if (count > 0) made.push({ position, year: yearAt(campus.calendar, year), count });
    });
  });
  return made;
}

/** The decisions that a state stands for. */
export function decisionsOf(state: SearchState): Decisions {
  const { campus } = state.tables.ground;
  const days = plannedSeasons(campus.calendar).flatMap((season) =>
    campus.workDays.map((day, d) => ({
      workDay: day.id,
      year: season.year,
      count: state.workDays[season.index]?.[d] ?? 0,
    })),
  );
  return sortDecisions({
    placements: placementsOf(state),
    hires: hiresOf(state),
    workDays: days.filter((d) => d.count > 0),
    purchases: purchasesOf(state) ?? [],
  });
}
