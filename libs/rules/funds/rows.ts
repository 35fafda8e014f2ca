import { fiscalYearLabel } from '#units/fiscal-year.js';
import { plannedYears, seasonInstance, yearAt } from '#domain/calendar.js';
import { NO_DECISIONS } from '#domain/plan.js';
import {
  buildBills,
  careCosts,
  compostPrice,
  moneyNeeds,
  positionCostIn,
  standingCost,
} from '#estimating/plan-needs/money-needs.js';
import { matchShare } from '#estimating/cost/matching.js';
import { frontingsOf } from '#estimating/purses/frontings.js';
import { pursesOf, type Payable } from '#estimating/purses/purses.js';
import type { Term } from '#mip/model.js';
import type { ModelDraft } from '#mip/model-draft.js';
import type { Columns } from '../columns.js';
import { FrontedMoney, UNIT, type Spent } from './fronted-rows.js';
import { payersOf, sinkKeyer, type Payers, type SinkKey } from './sinks.js';

/** Asked above each single cost, in cents, so that the solver's tolerance never leaves one a cent short. */
const MARGIN = 2;

/**
 * Every cost is paid in its year by purses that may pay it.
 *
 *     sum over purses p of spend[p, y, k]  >=  fixed[k, y] + sum over columns of cost[k, y] x      for each sink k, year y
 *     sum over sinks k, years y of spend[p, y, k]  <=  amount[p]                                  for each purse p
 *     sum of matching spend  <=  ratio / (1 + ratio) x cost of the site                           for each matched sink
 *
 * Money that is fronted for a reimbursable grant has rows of its own (`FrontedMoney`).
 */
export function addFundRows(draft: ModelDraft, columns: Columns): void {
  const purses = pursesOf(columns.campus);
  const frontings = frontingsOf(columns.campus, purses);
  const sinks = collectCosts(columns, { purses, frontings });
  const spent: Spent[][] = purses.map(() => []);
  const fronted = new FrontedMoney(draft, columns.campus, { purses, frontings });
  for (const [key, years] of sinks) {
    years.forEach((cost, year) => {
      if (cost.fixed === 0 && cost.terms.length === 0) return;
      addSinkRow({ draft, columns, purses, frontings, spent, fronted }, { key, year, cost });
    });
  }
  purses.forEach((purse, i) => {
    const label = `fund-vintage ${purse.fund.id} ${purse.inflow}`;
    if (fronted.addPurseRows(label, i, spent[i] ?? [])) return;
    draft.addRow({
      label,
      terms: (spent[i] ?? []).map(({ term }) => term),
      atMost: purse.amount / UNIT,
    });
  });
  fronted.addAwardRows();
}

interface Cost {
  fixed: number;
  readonly terms: Term[];
  /** Most matching money for each unit of a column, in cents. */
  readonly matched: Term[];
}

interface FundModel extends Payers {
  readonly draft: ModelDraft;
  readonly columns: Columns;
  readonly spent: Spent[][];
  readonly fronted: FrontedMoney;
}

interface SinkYear {
  readonly key: SinkKey;
  readonly year: number;
  readonly cost: Cost;
}

function addSinkRow(model: FundModel, { key, year, cost }: SinkYear): void {
  const { draft, columns, purses } = model;
  const label = fiscalYearLabel(yearAt(columns.campus.calendar, year));
  const matching = new Map<string, Term[]>();
  const paid = payersOf(key).flatMap((i) => {
    const purse = purses[i];
    if (!purse || year < purse.first || year > purse.last) return [];
    const variable = draft.addVariable({
      label: `spend ${purse.fund.id} ${purse.inflow} ${label} ${key}`,
      kind: 'continuous',
      upper: purse.amount / UNIT,
    });
    const term = { variable, coefficient: 1 };
    model.spent[i]?.push({ year, term });
    if (purse.fund.matchRatio !== undefined) {
      matching.set(purse.fund.id, [...(matching.get(purse.fund.id) ?? []), term]);
    }
    return [term];
  });
  const fronted = model.fronted.addSink({ key, year, label, bills: cost.matched });
  const margin = MARGIN + fronted.length;
  draft.addRow({
    label: `paid ${label} ${key}`,
    terms: [
      ...paid,
      ...fronted,
      ...cost.terms.map((t) => ({ ...t, coefficient: -(t.coefficient + margin) / UNIT })),
    ],
    atLeast: cost.fixed === 0 ? 0 : (cost.fixed + MARGIN) / UNIT,
  });
  addMatchRows({ draft, columns, label: `${label} ${key}` }, matching, cost);
}

function addMatchRows(
  at: { draft: ModelDraft; columns: Columns; label: string },
  matching: ReadonlyMap<string, Term[]>,
  cost: Cost,
): void {
  for (const [fundId, spend] of matching) {
    const fund = at.columns.campus.funds.find((f) => f.id === fundId);
    const share = fund ? matchShare(fund) : 0;
    at.draft.addRow({
      label: `match ${fundId} ${at.label}`,
      terms: [
        ...spend,
        ...cost.matched.map((t) => ({ ...t, coefficient: (-t.coefficient * share) / UNIT })),
      ],
      atMost: 0,
    });
  }
}

type Sinks = Map<SinkKey, Cost[]>;

function collectCosts(columns: Columns, payers: Payers): Sinks {
  const { campus } = columns;
  const keyOf = sinkKeyer(payers);
  const years = plannedYears(campus.calendar);
  const sinks: Sinks = new Map();
  const yearsOf = (cost: Payable): Cost[] => {
    const key = keyOf(cost);
    let row = sinks.get(key);
    if (!row) {
      row = Array.from({ length: years }, () => ({ fixed: 0, terms: [], matched: [] }));
      sinks.set(key, row);
    }
    return row;
  };
  addFixedCosts(columns, yearsOf);
  addLifecycleCosts(columns, yearsOf);
  addPeopleAndCompost(columns, yearsOf);
  return sinks;
}

/** Costs of the same payers by year. */
type CostsOf = (cost: Payable) => readonly Cost[];

function addFixedCosts(columns: Columns, costsOf: CostsOf): void {
  const { campus } = columns;
  for (const care of moneyNeeds(campus, NO_DECISIONS, columns.charges).care) {
    const { site, buildType } = care;
    const cost = costsOf({ line: 'care', site, buildType })[care.yearIndex];
    if (cost) cost.fixed += care.amount;
  }
  for (let year = 0; year < plannedYears(campus.calendar); year++) {
    const cost = costsOf({ line: 'standing' })[year];
    if (cost) cost.fixed += standingCost(campus, year);
  }
}

function addLifecycleCosts(columns: Columns, costsOf: CostsOf): void {
  const { campus } = columns;
  for (const { site, buildType, parts, variable } of columns.lifecycles) {
    for (const { yearIndex, amount } of buildBills(campus, parts)) {
      const build = costsOf({ line: 'build', site, buildType })[yearIndex];
      build?.terms.push({ variable, coefficient: amount });
      build?.matched.push({ variable, coefficient: amount });
    }
    const care = costsOf({ line: 'care', site, buildType });
    careCosts(campus, parts).forEach((coefficient, year) => {
      if (coefficient > 0) care[year]?.terms.push({ variable, coefficient });
    });
  }
}

function addPeopleAndCompost(columns: Columns, costsOf: CostsOf): void {
  const { campus } = columns;
  const years = plannedYears(campus.calendar);
  for (const { position, yearIndex: startYear, variable } of columns.hires) {
    for (let yearIndex = startYear; yearIndex < years; yearIndex++) {
      const coefficient = positionCostIn({ campus, position, startYear, yearIndex });
      if (coefficient > 0)
        costsOf({ line: 'positions' })[yearIndex]?.terms.push({ variable, coefficient });
    }
  }
  for (const { season, grade, variable } of columns.purchases) {
    const year = seasonInstance(campus.calendar, season).yearIndex;
    costsOf({ line: 'compost' })[year]?.terms.push({
      variable,
      coefficient: compostPrice(campus, year, grade),
    });
  }
}
