import type { Campus } from '#domain/campus.js';
import type { Decisions, Plan } from '#domain/plan.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import type { ResolveOrder } from '#optimizer/resolve/order.js';
import { soundIncumbent } from '#optimizer/solve/incumbent.js';
import { counted, listInWords } from '#units/in-words.js';
import { planMeasures } from '../common/plan-measures.js';
import type { AskedOfCampus } from '../common/asked.js';
import type { RepairRow } from './answer.js';
import { changesFor } from './changes-for.js';
import { withChanges, type FileChange } from './changes.js';
import { keeping, type Member } from './members.js';
import { pricesOf } from './prices.js';

/** Rounds of search by which the plan of a repair comes near to what was promised. */
const ROUNDS = 25;
const TIMED_ROUNDS = 2000;

/** Seconds of one search, at the most, and the share of the time left that all of one step may take. */
const MOST_SECONDS = 2.5;
const STEP_SHARE = 0.45;

/** Steps by which less and less money and work is tried. */
const MOST_STEPS = 6;

/** How much of what the best plan so far asks for is tried next, and above what it is not worth trying. */
const FIRST_SHARE = 0.5;
const LAST_SHARE = 0.8;

interface ToPrice {
  readonly all: readonly Member[];
  readonly repairs: readonly (readonly Member[])[];
  /** The plan by which it was found that one exists with these let go. */
  readonly planOf: (lets: readonly Member[]) => Plan | undefined;
}

/** A repair, its best plan so far, and how much of what that asks for is tried next. */
interface Open {
  readonly lets: readonly Member[];
  readonly row: RepairRow;
  readonly decisions?: Decisions;
  readonly share: number;
}

/**
 * Works out each repair, beginning with the plan by which it was found. Promises let go are aimed at as
 * far as they can be; of limits let go a half is tried, and less or more from there, as a plan is found
 * or not. The price is what the plan that gives up least falls short by. Cheapest first, by the shares
 * given up.
 */
export async function pricedRepairs(asked: AskedOfCampus, of: ToPrice): Promise<RepairRow[]> {
  let repairs = of.repairs.map((lets) => begun(asked.campus, lets, of.planOf(lets)?.decisions));
  for (let step = 0; step < MOST_STEPS && asked.resolver.secondsLeft() > 0; step++) {
    const next = repairs.filter((r) => isOpen(r, step));
    if (next.length === 0) break;
    const count = next.length;
    const seed = asked.seed + step;
    const orders = next.map((r) => orderOf({ ...asked, seed }, r, { all: of.all, count }));
    const answers = await asked.resolver.resolve(orders);
    const tried = new Map(
      next.map((r, i) => [r, after(asked.campus, r, answers[i]?.plan?.decisions)]),
    );
    repairs = repairs.map((r) => tried.get(r) ?? r);
  }
  return repairs.map(({ row }) => row).sort((a, b) => total(a) - total(b));
}

function begun(campus: Campus, lets: readonly Member[], decisions: Decisions | undefined): Open {
  const row = decisions && rowOf(campus, lets, decisions);
  return {
    ...{ lets, row: row ?? unpriced(lets), share: FIRST_SHARE },
    ...(decisions ? { decisions } : {}),
  };
}

/** Until nothing is given up, or no less of it was found. */
function isOpen({ row, share }: Open, step: number): boolean {
  return step === 0 || (share <= LAST_SHARE && total(row) > 0);
}

function orderOf(
  { campus, seed, resolver }: AskedOfCampus,
  { lets, decisions, row, share }: Open,
  { all, count }: { readonly all: readonly Member[]; readonly count: number },
): ResolveOrder {
  const left = resolver.secondsLeft();
  const timed = Number.isFinite(left);
  const each = (left * STEP_SHARE * resolver.parallel) / count;
  const less = (row.changes ?? []).map((change) => lessOf(campus, change, share));
  return {
    campus: row.changes ? aimsFirst(campus, lets, less) : repaired(campus, all, lets),
    ...(decisions ? { start: decisions } : {}),
    seed,
    effort: { kind: 'rounds', rounds: timed ? TIMED_ROUNDS : ROUNDS },
    ...(timed ? { seconds: Math.min(MOST_SECONDS, each) } : {}),
    wish: 'best',
  };
}

/** A share of the money or work, the money at once: when it is needed is seen from the plan. */
function lessOf({ calendar }: Campus, change: FileChange, share: number): FileChange {
  if (change.change === 'add-fund') {
    const dollars = change.inflows.reduce((sum, i) => sum + i.dollars, 0) * share;
    return { ...change, inflows: [{ year: calendar.firstYear, dollars: Math.round(dollars) }] };
  }
  if (change.change !== 'add-people') return change;
  const hours = Object.entries(change.hours).map(([season, h]) => [season, Math.round(h * share)]);
  return { ...change, hours: Object.fromEntries(hours) as Record<string, number> };
}

/** The campus with the changes, its promises let go as the first aims. */
function aimsFirst(
  campus: Campus,
  lets: readonly Member[],
  changes: readonly FileChange[],
): Campus {
  const changed = withChanges(campus, changes);
  const isLet = ({ id }: { readonly id: string }) =>
    lets.some((m) => m.kind === 'commitment' && m.id === id);
  const [aims, others] = [true, false].map((let_) =>
    changed.commitments.filter((c) => isLet(c) === let_),
  );
  return { ...changed, commitments: [...(aims ?? []), ...(others ?? [])] };
}

/** The better of the plan so far and another; less is tried where one was found, else more. */
function after(campus: Campus, before: Open, decisions: Decisions | undefined): Open {
  const row = decisions && rowOf(campus, before.lets, decisions);
  if (row && total(row) < total(before.row)) {
    return { lets: before.lets, row, decisions, share: FIRST_SHARE };
  }
  return { ...before, share: (1 + before.share) / 2 };
}

function total({ prices }: RepairRow): number {
  return prices === null ? Infinity : prices.reduce((sum, { share }) => sum + share, 0);
}

/** The campus in which a repair is sought: promises let go become the first aims, limits let go are ample. */
export function repaired(campus: Campus, all: readonly Member[], lets: readonly Member[]): Campus {
  const kept = new Set(all.filter((m) => !lets.includes(m)));
  const aims = campus.commitments
    .filter((c) => lets.some((m) => m.kind === 'commitment' && m.id === c.id))
    .map((c) => ({ ...c, strength: 'intended' as const }));
  const freed = keeping(campus, all, kept);
  return { ...freed, commitments: [...aims, ...freed.commitments] };
}

/** A repair with its price; `undefined` where the plan does not pass every check of the changed campus. */
function rowOf(
  campus: Campus,
  lets: readonly Member[],
  decisions: Decisions,
): RepairRow | undefined {
  const changes = changesFor(campus, lets, decisions);
  const changed = withChanges(campus, changes);
  const plan = soundIncumbent(changed, decisions, campusCharges(changed))?.plan;
  if (!plan) return undefined;
  const parts = pricesOf(campus, { lets, changes, plan });
  const prices = parts.map(({ words: _, ...price }) => price);
  const sites = counted(plan.decisions.placements.length, 'site');
  return {
    ...{ lets: membersOf(lets), prices, changes, plan: planMeasures(changed, plan) },
    sentence: `A verified plan exists if ${joined(parts.map(({ words }) => words))}. It builds ${sites}.`,
  };
}

/** Parts that hold commas of their own are set apart by semicolons. */
function joined(parts: readonly string[]): string {
  const [last, ...others] = [...parts].reverse();
  return others.length === 0 ? (last ?? '') : `${others.reverse().join('; ')}; and ${last ?? ''}`;
}

function unpriced(lets: readonly Member[]): RepairRow {
  const names = listInWords(lets.map(letGo));
  return {
    ...{ lets: membersOf(lets), prices: null, changes: null, plan: null },
    sentence: `A plan exists if ${names}; what it would cost was not worked out.`,
  };
}

function membersOf(lets: readonly Member[]): RepairRow['lets'] {
  return lets.map(({ kind, id, name }) => ({ kind, id, name }));
}

function letGo({ kind, id, name }: Member): string {
  if (id === 'frozen-years') return `the ${name} are open again`;
  return kind === 'commitment'
    ? `“${name}” is an aim and not binding`
    : (MORE_FOUND[id] ?? `more than the limit on ${name} is found`);
}

const MORE_FOUND: Readonly<Record<string, string>> = {
  money: 'more money is found than the funds hold',
  labor: 'more hours of work are found than the people there are have',
  compost: 'more compost is found than is made and bought',
};
