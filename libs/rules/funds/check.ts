import type { Breach } from '#domain/breach.js';
import { plannedYears, yearAt, yearIndexOf } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { Fund } from '#domain/money.js';
import type { Plan, SpendEntry } from '#domain/plan.js';
import { moneyNeeds, type MoneyNeeds, type SiteCost } from '#estimating/plan-needs/money-needs.js';
import { paybackOf } from '#estimating/purses/paybacks.js';
import { paysBackLater } from '#estimating/purses/purses.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import type { Check } from '../check.js';
import { checkFronted } from './check-fronted.js';
import { allows, breach, dollars, total, typeOf } from './entries.js';

/**
 * Every cost is paid to the cent in its year; every inflow is spent only on what it may be spent on,
 * from the year it arrives to its last year, and never beyond what is there of it in that year;
 * matching and reimbursing money never exceeds its ratio of the other money of the same bill.
 */
export const checkFunds: Check = (campus, plan) => {
  const needs = moneyNeeds(campus, plan.decisions);
  return [
    ...plan.spending.flatMap((entry) => entryBreaches(campus, plan, entry)),
    ...checkFronted(campus, plan),
    ...campus.funds.flatMap((fund) => overspent(campus, fund, plan.spending)),
    ...buildBreaches(campus, needs, plan),
    ...yearTotals(campus, needs, plan),
    ...siteCareBreaches(campus, needs, plan),
    ...campus.funds.flatMap((fund) => matchBreaches(fund, { campus, needs, plan })),
  ];
};

function entryBreaches(campus: Campus, plan: Plan, entry: SpendEntry): Breach[] {
  const fund = campus.funds.find((f) => f.id === entry.fund);
  const inflow = fund?.inflows[entry.inflow];
  if (!fund || !inflow || !fund.counted || paysBackLater(fund)) {
    return [
      breach(
        entry.fund,
        `${entry.fund} has no money numbered ${entry.inflow} that the plan may spend`,
      ),
    ];
  }
  const found: Breach[] = [];
  const year = fiscalYearLabel(entry.year);
  if (!Number.isSafeInteger(entry.amount) || entry.amount <= 0) {
    found.push(
      breach(
        fund.id,
        `${fund.name} spends ${dollars(entry.amount)} in ${year}, which is not an amount above 0`,
      ),
    );
  }
  if (entry.year < inflow.year || entry.year > inflow.lastYear) {
    const window = `${fiscalYearLabel(inflow.year)} to ${fiscalYearLabel(inflow.lastYear)}`;
    found.push(
      breach(fund.id, `${fund.name} spends in ${year} money that may be spent in ${window}`),
    );
  }
  if (!allows(inflow, typeOf(campus, plan, entry), entry)) {
    const on = entry.site === undefined ? entry.line : `${entry.line} of ${entry.site}`;
    found.push(
      breach(fund.id, `${fund.name} may not pay for ${on} (${dollars(entry.amount)} in ${year})`),
    );
  }
  return found;
}

function overspent(campus: Campus, fund: Fund, spending: readonly SpendEntry[]): Breach[] {
  return fund.inflows.flatMap((inflow, index) => {
    const entries = spending.filter((s) => s.fund === fund.id && s.inflow === index);
    const over = mostOut(campus, entries);
    if (over <= inflow.amount) return [];
    return [
      breach(
        fund.id,
        `${fund.name} spends ${dollars(over)} of the ${dollars(inflow.amount)} that arrive in ${fiscalYearLabel(inflow.year)}`,
      ),
    ];
  });
}

/** The most that is spent and not yet paid back at the end of any year, in cents. */
function mostOut(campus: Campus, entries: readonly SpendEntry[]): number {
  const out = (year: number) =>
    total(entries.filter((s) => s.year <= year && (paybackOf(campus, s)?.year ?? Infinity) > year));
  return Math.max(0, ...[...new Set(entries.map((s) => s.year))].map(out));
}

function buildBreaches(campus: Campus, needs: MoneyNeeds, plan: Plan): Breach[] {
  const paid = plan.spending.filter((s) => s.line === 'build');
  const due = (cost: SiteCost) =>
    total(
      paid.filter(
        (s) => s.site === cost.site && yearIndexOf(campus.calendar, s.year) === cost.yearIndex,
      ),
    );
  const wrong = needs.build.filter((cost) => due(cost) !== cost.amount);
  const stray = paid.filter(
    (s) =>
      !needs.build.some(
        (c) => c.site === s.site && yearAt(campus.calendar, c.yearIndex) === s.year,
      ),
  );
  return [
    ...wrong.map((c) =>
      breach(
        c.site,
        `building ${c.site} costs ${dollars(c.amount)} in ${fiscalYearLabel(yearAt(campus.calendar, c.yearIndex))}; ${dollars(due(c))} is paid`,
      ),
    ),
    ...stray.map((s) =>
      breach(
        s.fund,
        `${dollars(s.amount)} is paid for building ${s.site ?? 'no site'} in ${fiscalYearLabel(s.year)}, when it is not built`,
      ),
    ),
  ];
}

function yearTotals(campus: Campus, needs: MoneyNeeds, plan: Plan): Breach[] {
  return Array.from({ length: plannedYears(campus.calendar) }, (_, yearIndex) => {
    const year = yearAt(campus.calendar, yearIndex);
    const due = {
      care: total(needs.care.filter((c) => c.yearIndex === yearIndex)),
      positions: needs.positions[yearIndex] ?? 0,
      compost: needs.compost[yearIndex] ?? 0,
      standing: needs.standing[yearIndex] ?? 0,
    };
    return Object.entries(due).flatMap(([line, amount]) => {
      const paid = total(plan.spending.filter((s) => s.line === line && s.year === year));
      if (paid === amount) return [];
      return [
        breach(
          line,
          `${line} costs ${dollars(amount)} in ${fiscalYearLabel(year)}; ${dollars(paid)} is paid`,
        ),
      ];
    });
  }).flat();
}

function siteCareBreaches(campus: Campus, needs: MoneyNeeds, plan: Plan): Breach[] {
  const named = plan.spending.filter((s) => s.line === 'care' && s.site !== undefined);
  const keys = new Set(named.map((s) => `${s.site} ${s.year}`));
  return [...keys].flatMap((key) => {
    const [site, year] = key.split(' ');
    const paid = total(named.filter((s) => s.site === site && String(s.year) === year));
    const cost = total(
      needs.care.filter(
        (c) => c.site === site && String(yearAt(campus.calendar, c.yearIndex)) === year,
      ),
    );
    if (paid <= cost) return [];
    return [
      breach(
        site ?? '',
        `${dollars(paid)} is paid for the care of ${site} in FY${year}, which costs ${dollars(cost)}`,
      ),
    ];
  });
}

/** Matching money, bill by bill: each half of a site is a bill of its own. */
function matchBreaches(fund: Fund, { campus, needs, plan }: Paid): Breach[] {
  const { matchRatio: ratio = Infinity, reimbursement } = fund;
  if (fund.matchRatio === undefined && !reimbursement) return [];
  const spent = plan.spending.filter((s) => s.fund === fund.id || s.repaidBy?.fund === fund.id);
  const elsewhere = spent
    .filter((s) => s.line !== 'build')
    .map((s) =>
      breach(
        fund.id,
        `${fund.name} matches money on builds and pays ${dollars(s.amount)} on ${s.line}`,
      ),
    );
  const above = needs.build.flatMap(({ site, yearIndex, amount }) => {
    const year = yearAt(campus.calendar, yearIndex);
    const matched = total(spent.filter((s) => s.site === site && s.year === year));
    const other = amount - matched;
    if (ratio === Infinity || matched <= ratio * other + ROUNDING) return [];
    const where = `${site} in ${fiscalYearLabel(year)}`;
    return [
      breach(
        fund.id,
        `${fund.name} pays ${dollars(matched)} on ${where}, above its share of the other ${dollars(other)}`,
      ),
    ];
  });
  return [...elsewhere, ...above];
}

/** A millionth of a cent: what a product of a ratio and whole cents may be off by. */
const ROUNDING = 1e-6;

interface Paid {
  readonly campus: Campus;
  readonly needs: MoneyNeeds;
  readonly plan: Plan;
}
