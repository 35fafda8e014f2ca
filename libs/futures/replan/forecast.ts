import type { Campus } from '#domain/campus.js';
import type { EscalationKind, Fund } from '#domain/money.js';
import { moneyTest } from '#optimizer/search/fronted-test.js';
import { keptFlow, type KeptMoney } from '#optimizer/search/money-test.js';
import { gapIn } from '#optimizer/search/hire-for-gaps.js';
import {
  allPaid,
  applyHire,
  applyLife,
  purchasesOf,
  type SearchState,
} from '#optimizer/search/state.js';
import { compostPrice } from '#estimating/plan-needs/money-needs.js';
import { seasonInstance } from '#domain/calendar.js';
import { TASK_CLASSES } from '#domain/labor.js';
import { CARE_CLASSES } from '#estimating/site-charges/type-profile.js';
import {
  billsOf,
  CLASS_COUNT,
  type Amounts,
  type Due,
  type LifeCharges,
} from '#optimizer/search/life-charges.js';
import type { Tables } from '#optimizer/search/tables.js';
import type { Lifecycle } from '#rules/columns.js';
import { scaleCents } from '#units/cents.js';
import { centiYards } from '#units/centiyards.js';
import type { Basis, BasisCost } from './basis.js';

const CARE_PLACES = CARE_CLASSES.map((c) => TASK_CLASSES.indexOf(c));

/** What a planner knows in the building season of a year. */
export interface Known {
  readonly year: number;
  readonly season: number;
  /** Sites whose first ground was prepared in earlier years, or in this one. */
  readonly begun: ReadonlySet<Lifecycle>;
  /** Positions at [position][start year]: those asked for, and those still meant to be. */
  readonly hires: readonly Int32Array[];
  /** Cents left in each purse, in the order of the campus's purses; money that did not come is 0. */
  readonly purses: Float64Array;
  /** Cents that a reimbursable grant still pays back. */
  readonly repayable: (grant: Fund) => number;
  /** Compost in stock, hundredths of a cubic yard. */
  readonly stock: number;
  /** Care that the ground wants against what was planned, as seen in the last year: weeds make it more. */
  readonly careFactor: number;
  /** Prices against those that the plan reckons with; taken to stay so far off. */
  readonly prices: Readonly<Record<EscalationKind, number>>;
  /** Cost of building against its estimate, of sites that were ever priced. */
  readonly bids: ReadonlyMap<string, number>;
}

/**
 * The rest of a plan as it looks in one year of a future, in the exact accounts of the optimizer's
 * search: from this season on, with what is known. Hours are as planned, since nobody knows who will
 * leave. Let go are hours of what is begun that nobody has, and running costs of the plan as it stands that
 * no money is left for: neither is a reason to stop, and no change may add to them.
 */
export function forecast(basis: Basis, known: Known, open: Iterable<Lifecycle>): SearchState {
  const { tables, workDays, empty } = basis;
  const own = tablesKnowing(basis, known);
  const kept = keptFlow(own, basis.layout);
  const hours = new Float64Array(tables.seasons);
  const state: SearchState = {
    tables: own,
    labor: {
      hire: (position, startYear, count) => basis.labor.hire(position, startYear, count),
      worst: (needs, season) => {
        const worst = basis.labor.worst(needs, season);
        return { ...worst, hours: worst.hours - (hours[season] ?? 0) };
      },
    },
    money: moneyTest(own, kept),
    needs: Float64Array.from(empty.needs),
    room: new Float64Array(tables.seasons).fill(-1),
    compost: Float64Array.from(empty.compost),
    certified: Float64Array.from(empty.certified),
    costs: new Float64Array(tables.sinkKeys.length * tables.years),
    workDays,
    hires: basis.hires.map((byYear) => new Int32Array(byYear.length)),
    lives: new Set(),
  };
  for (const cost of basis.standing) owe(state, cost, known);
  known.hires.forEach((byYear, position) =>
    byYear.forEach((count, startYear) => {
      if (count > 0) applyHire(state, { position, startYear, count });
    }),
  );
  for (const life of known.begun) applyLife(state, life, 1);
  for (const place of CARE_PLACES) {
    for (let at = place; at < state.needs.length; at += CLASS_COUNT) {
      state.needs[at] = (state.needs[at] ?? 0) * known.careFactor;
    }
  }
  condoneHours(state, hours);
  for (const life of open) applyLife(state, life, 1);
  condoneDollars({ basis, known, state, kept });
  return state;
}

/** Takes the hires of a forecast off the hours that all forecasts share. */
export function close(basis: Basis, state: SearchState): void {
  state.hires.forEach((byYear, position) =>
    byYear.forEach((count, startYear) => {
      if (count > 0) basis.labor.hire(position, startYear, -count);
    }),
  );
}

function owe(state: SearchState, cost: BasisCost, { year, prices }: Known): void {
  // Running costs of this year are paid already.
  if (cost.year <= year) return;
  const at = cost.sink * state.tables.years + cost.year;
  state.costs[at] = (state.costs[at] ?? 0) + Math.round(cost.amount * prices[cost.kind]);
  state.money.touch(at);
}

/** Tables of a campus with the money, prices, and compost that are left. */
function tablesKnowing(basis: Basis, known: Known): Tables {
  const { tables } = basis;
  const charges = new Map<Lifecycle, LifeCharges>();
  return {
    ...tables,
    ground: { ...tables.ground, campus: campusKnowing(tables.ground.campus, known) },
    seasonList: tables.seasonList.slice(known.season),
    purses: tables.purses.map((purse, i) => ({
      ...purse,
      amount: Math.round(known.purses[i] ?? 0),
    })),
    frontings: tables.frontings.map((f) => ({
      ...f,
      most: Math.max(0, Math.min(f.most, Math.floor(known.repayable(f.grant)))),
    })),
    positions: tables.positions.map((table, place) => ({
      ...table,
      firstStart: basis.firstStart(place, known.year),
      bills: (startYear) => billsAhead(table.bills(startYear), tables.years, known),
    })),
    chargesOf(life) {
      const found = charges.get(life);
      if (found) return found;
      const made = {
        ...tables.chargesOf(life),
        bills: billsOf(billsKnowing(basis, known, life), tables.years),
      };
      charges.set(life, made);
      return made;
    },
  };
}

/** What a position costs after this year, at the wages of the future. */
function billsAhead({ at, amounts }: Amounts, years: number, { year, prices }: Known): Amounts {
  return {
    at,
    amounts: amounts.map((cents, i) =>
      (at[i] ?? 0) % years <= year ? 0 : Math.round(cents * prices.wages),
    ),
  };
}

function campusKnowing(campus: Campus, { stock, prices }: Known): Campus {
  const { compost } = campus;
  return {
    ...campus,
    compost: {
      ...compost,
      openingStock: centiYards(Math.max(0, Math.round(stock))),
      pricePerYard: scaleCents(compost.pricePerYard, prices.supplies),
    },
  };
}

function billsKnowing(basis: Basis, known: Known, life: Lifecycle): Due[] {
  const care = basis.costsOf(life).care.filter((c) => isDue(c, known, life));
  return [...buildsDue(basis, known, life), ...care.map((c) => priced(c, known))];
}

function buildsDue(basis: Basis, known: Known, life: Lifecycle): Due[] {
  const bid = known.bids.get(life.site) ?? 1;
  const builds = basis.costsOf(life).build.filter((c) => isDue(c, known, life));
  return builds.map((c) => priced({ ...c, amount: c.amount * bid }, known));
}

/** What was begun has paid this year's running costs, and its builds up to this year. */
function isDue({ year }: BasisCost, known: Known, life: Lifecycle): boolean {
  return known.begun.has(life) ? year > known.year : year >= known.year;
}

function priced({ sink, year, amount, kind }: BasisCost, { prices }: Known): Due {
  return [sink, year, Math.round(amount * prices[kind])];
}

/** Condones hours that what is begun asks for and nobody has, the positions meant so far included. */
function condoneHours(state: SearchState, hours: Float64Array): void {
  for (const { index } of state.tables.seasonList) {
    const gap = gapIn(state, index);
    if (gap) hours[index] = gap.hours;
  }
}

interface Condoned {
  readonly basis: Basis;
  readonly known: Known;
  readonly state: SearchState;
  readonly kept: KeptMoney;
}

/** Condones running costs that no money is left for, with the plan as it stands. */
function condoneDollars({ basis, known, state, kept }: Condoned): void {
  const purchases = purchasesOf(state);
  if (purchases && allPaid(state, purchases)) return;
  const running = runningCosts(basis, known, state);
  const paid = kept.payable(running);
  running.forEach((cost, at) => {
    const short = cost - (paid[at] ?? 0);
    if (short <= 0) return;
    state.costs[at] = (state.costs[at] ?? 0) - short;
    state.money.touch(at);
  });
}

/** All costs of a state but its builds, with the compost that it buys. */
function runningCosts(basis: Basis, known: Known, state: SearchState): Float64Array {
  const { tables } = state;
  const { years, ground } = tables;
  const costs = Float64Array.from(state.costs);
  const add = (sink: number, year: number, amount: number) => {
    const at = sink * years + year;
    costs[at] = (costs[at] ?? 0) + amount;
  };
  for (const life of state.lives) {
    for (const [sink, year, amount] of buildsDue(basis, known, life)) add(sink, year, -amount);
  }
  const sink = tables.sinks.compost;
  for (const { season, cubicYards, grade } of purchasesOf(state) ?? []) {
    const { yearIndex } = seasonInstance(ground.campus.calendar, season);
    add(sink, yearIndex, cubicYards * compostPrice(ground.campus, yearIndex, grade));
  }
  return costs;
}
