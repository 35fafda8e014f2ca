import { seasonInstance, yearAt } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { gradeSupply } from '#domain/compost.js';
import { gradeOf, type Decisions } from '#domain/plan.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { completePlan, type CompletedPlan } from '#optimizer/allocate/complete-plan.js';
import { freeId, type FileChange, type YearlyDollars } from './changes.js';
import type { Member } from './members.js';

/** Money is asked for in whole thousands of a year, so that what is said is what is written. */
const DOLLAR_STEP = 1000;

/** What the file has to say so that decisions which need what was let go pass every check. */
export function changesFor(
  campus: Campus,
  lets: readonly Member[],
  decisions: Decisions,
): FileChange[] {
  const real = completePlan(campus, decisions, campusCharges(campus));
  return lets.flatMap(({ kind, id }): FileChange[] => {
    if (kind === 'commitment') return [{ change: 'aim', commitment: id }];
    if (id === 'frozen-years') return [{ change: 'open-years' }];
    if (id === 'money') return moneyChange(campus, real);
    if (id === 'labor') return peopleChange(campus, lets, real);
    return compostChange(campus, decisions);
  });
}

function moneyChange({ calendar, funds }: Campus, { shortages }: CompletedPlan): FileChange[] {
  const byYear = new Map<number, number>();
  for (const { resource, at, amount } of shortages) {
    if (resource === 'money') byYear.set(at, (byYear.get(at) ?? 0) + amount / 100);
  }
  const inflows = [...byYear]
    .sort(([a], [b]) => a - b)
    .map(([at, dollars]): YearlyDollars => {
      return { year: yearAt(calendar, at), dollars: upTo(dollars, DOLLAR_STEP) };
    });
  if (inflows.length === 0) return [];
  return [
    {
      ...{ change: 'add-fund', id: freeId(funds, 'money-to-find'), name: 'Money to be found' },
      inflows,
    },
  ];
}

function peopleChange(campus: Campus, lets: readonly Member[], real: CompletedPlan): FileChange[] {
  const { calendar, pools } = campus;
  const short = hoursShort(campus, lets, real);
  const hours: Record<string, number> = {};
  for (const [at, amount] of short) {
    const { season } = seasonInstance(calendar, at);
    hours[season.id] = Math.max(hours[season.id] ?? 0, upTo(amount, 1));
  }
  const first = Math.min(...[...short.keys()].map((at) => seasonInstance(calendar, at).yearIndex));
  if (short.size === 0) return [];
  const person = { id: freeId(pools, 'people-to-find'), name: 'People to be found' };
  return [{ change: 'add-people', ...person, fromYear: yearAt(calendar, first), hours }];
}

/**
 * Hours that nobody has, by running season: of work that must be done, and of care where a binding
 * promise asks for all of it.
 */
export function hoursShort(
  { commitments }: Campus,
  lets: readonly Member[],
  { plan, shortages }: CompletedPlan,
): ReadonlyMap<number, number> {
  const bySeason = new Map<number, number>();
  const add = (season: number, hundredths: number) =>
    bySeason.set(season, (bySeason.get(season) ?? 0) + hundredths / 100);
  const isAsked = commitments.some(
    ({ id, strength, test }) =>
      test.kind === 'no-unserved-care' &&
      strength === 'binding' &&
      !lets.some((m) => m.kind === 'commitment' && m.id === id),
  );
  if (isAsked) for (const { season, hours } of plan.unserved) add(season, hours);
  for (const s of shortages) if (s.resource === 'labor') add(s.at, s.amount);
  return bySeason;
}

function compostChange({ compost }: Campus, { purchases }: Decisions): FileChange[] {
  const bought = purchases.filter((p) => gradeOf(p) === 'certified').map((p) => p.cubicYards);
  const allowed = gradeSupply(compost, 'certified').mostBoughtPerSeason;
  return [{ change: 'give-compost', mostCubicYardsPerSeason: Math.max(allowed, ...bought) }];
}

function upTo(amount: number, step: number): number {
  // Amounts are whole hundredths, so that this takes off what a sum of doubles adds and no more.
  return Math.ceil(Math.round(amount * 100) / 100 / step) * step;
}
