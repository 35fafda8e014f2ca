import { seasonInstance, seasonLabel } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { gradeSupply } from '#domain/compost.js';
import { gradeOf, type Plan } from '#domain/plan.js';
import type { Commitment } from '#domain/commitment.js';
import type { ConflictMember } from '#domain/tier.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { compostNeeds } from '#estimating/plan-needs/compost-needs.js';
import { completePlan } from '#optimizer/allocate/complete-plan.js';
import type { ResolveOrder } from '#optimizer/resolve/order.js';
import { commitmentShortfall } from '#rules/commitment-shortfall.js';
import { checkStability } from '#rules/stability/check.js';
import { frozenHires, frozenSites } from '#rules/stability/frozen.js';
import { cents, centsToDollars } from '#units/cents.js';
import {
  counted,
  dollarsInWords,
  hoursInWords,
  listInWords,
  percentInWords,
  wholeInWords,
} from '#units/in-words.js';
import { amountOfTier } from '../../overview/tier-words.js';
import { planMeasures } from '../common/plan-measures.js';
import type { AskedOfCampus } from '../common/asked.js';
import type { RepairPrice, RepairRow } from './answer.js';
import { keeping, type Member } from './members.js';

/** Rounds of search by which the plan of a repair comes near to what was promised. */
const ROUNDS = 25;
const TIMED_ROUNDS = 2000;
const MOST_SECONDS = 4;

/** Share of the time left that the plans of all repairs may take. */
const PRICING_SHARE = 0.9;

/**
 * Works out each repair: what it lets go is aimed at as far as it can be, promises first, and what the
 * plan found then falls short by is the price. Cheapest first, by the shares given up.
 */
export async function pricedRepairs(asked: AskedOfCampus, of: ToPrice): Promise<RepairRow[]> {
  const answers = await asked.resolver.resolve(of.repairs.map((lets) => orderOf(asked, of, lets)));
  return of.repairs
    .map((lets, i) => cheapest(asked.campus, lets, [answers[i]?.plan, of.planOf(lets)]))
    .sort((a, b) => total(a) - total(b));
}

/** Priced by the plan that gives up least of those found: the best one may well ask for more. */
function cheapest(
  campus: Campus,
  lets: readonly Member[],
  plans: readonly (Plan | undefined)[],
): RepairRow {
  const found = plans.filter((plan) => plan !== undefined);
  const [first, ...others] = found.map((plan) => rowOf(campus, lets, plan));
  if (!first) return rowOf(campus, lets, undefined);
  return others.reduce((least, row) => (total(row) < total(least) ? row : least), first);
}

interface ToPrice {
  readonly all: readonly Member[];
  readonly repairs: readonly (readonly Member[])[];
  /** The plan by which it was found that one exists with these let go. */
  readonly planOf: (lets: readonly Member[]) => Plan | undefined;
}

function total({ prices }: RepairRow): number {
  return prices === null ? Infinity : prices.reduce((sum, { share }) => sum + share, 0);
}

function orderOf(
  { campus, seed, resolver }: AskedOfCampus,
  { all, repairs, planOf }: ToPrice,
  lets: readonly Member[],
): ResolveOrder {
  const left = resolver.secondsLeft();
  const timed = Number.isFinite(left);
  const each = (left * PRICING_SHARE * resolver.parallel) / repairs.length;
  const start = planOf(lets)?.decisions;
  return {
    campus: repaired(campus, all, lets),
    ...(start ? { start } : {}),
    seed,
    effort: { kind: 'rounds', rounds: timed ? TIMED_ROUNDS : ROUNDS },
    ...(timed ? { seconds: Math.min(MOST_SECONDS, each) } : {}),
    wish: 'best',
  };
}

/** The campus in which a repair is applied: promises let go become the first aims, limits let go are ample. */
export function repaired(campus: Campus, all: readonly Member[], lets: readonly Member[]): Campus {
  const kept = new Set(all.filter((m) => !lets.includes(m)));
  const aims = campus.commitments
    .filter((c) => lets.some((m) => m.kind === 'commitment' && m.id === c.id))
    .map((c) => ({ ...c, strength: 'intended' as const }));
  const freed = keeping(campus, all, kept);
  return { ...freed, commitments: [...aims, ...freed.commitments] };
}

function rowOf(campus: Campus, lets: readonly Member[], plan: Plan | undefined): RepairRow {
  const members = lets.map(({ kind, id, name }) => ({ kind, id, name }));
  const names = listInWords(members.map(letGo));
  if (!plan) {
    return {
      lets: members,
      prices: null,
      plan: null,
      sentence: `A plan exists if ${names}; what it would cost was not worked out.`,
    };
  }
  const prices = lets.map((m) => priceOf(campus, m, plan));
  const costs = prices.map(({ sentence }) => sentence).join('; ');
  return {
    lets: members,
    prices,
    plan: planMeasures(campus, plan),
    sentence: `A verified plan exists if ${names}: ${costs}; it builds ${counted(plan.decisions.placements.length, 'site')}.`,
  };
}

function letGo({ kind, id, name }: ConflictMember): string {
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

function priceOf(campus: Campus, member: Member, plan: Plan): RepairPrice {
  return member.kind === 'commitment'
    ? promisePrice(campus, member, plan)
    : limitPrice(campus, member, plan);
}

function promisePrice(campus: Campus, { id, name }: Member, plan: Plan): RepairPrice {
  const commitment = campus.commitments.find((c) => c.id === id);
  if (!commitment) throw new RangeError(`no commitment ${id}`);
  const { amount, unit, whole } = commitmentShortfall(campus, plan, commitment);
  const share = whole > 0 ? Math.min(1, amount / whole) : amount > 0 ? 1 : 0;
  return { id, name, amount, unit, share, sentence: shortOf(commitment, { amount, unit, whole }) };
}

/** `2 of 18 sites missing`; `18 sites are of other build types`. */
function shortOf(
  { test }: Commitment,
  { amount, unit, whole }: { amount: number; unit: string; whole: number },
): string {
  if (amount === 0) return 'the plan found keeps it all the same';
  if (test.kind === 'only-build-types')
    return `${counted(amount, 'site is', 'sites are')} of other build types`;
  if (test.kind === 'no-new-positions-before')
    return `${counted(amount, 'position starts', 'positions start')} sooner`;
  if (test.kind === 'no-unserved-care') return `${hoursInWords(amount)} of care left undone`;
  if (amount >= whole && whole > 0) return 'the plan found does not keep it at all';
  return whole > 0
    ? `${wholeInWords(amount)} of ${amountOfTier(unit, whole)} missing`
    : `${amountOfTier(unit, amount)} missing`;
}

/** What the decisions of a plan ask for beyond a limit of the campus as it is. */
function limitPrice(campus: Campus, { id, name }: Member, plan: Plan): RepairPrice {
  if (id === 'frozen-years') return frozenPrice(campus, { id, name }, plan);
  const real = completePlan(campus, plan.decisions, campusCharges(campus));
  if (id === 'money') {
    const short = real.shortages.filter((s) => s.resource === 'money');
    const amount = centsToDollars(cents(short.reduce((sum, s) => sum + s.amount, 0)));
    const spent = centsToDollars(cents(plan.spending.reduce((sum, s) => sum + s.amount, 0)));
    return {
      id,
      name,
      amount,
      unit: 'dollars',
      share: amount / Math.max(1, spent),
      sentence: `${dollarsInWords(amount)} more over all years`,
    };
  }
  if (id === 'labor') return laborPrice(campus, { id, name }, real);
  return compostPrice(campus, { id, name }, plan);
}

/** Sites and hires of the frozen years that are not as they were published. */
function frozenPrice(
  campus: Campus,
  { id, name }: Pick<Member, 'id' | 'name'>,
  plan: Plan,
): RepairPrice {
  const amount = checkStability(campus, plan).length;
  const published = frozenSites(campus).length + frozenHires(campus).length;
  const sentence = `${counted(amount, 'decision')} of those years made otherwise than published`;
  const share = Math.min(1, amount / Math.max(1, published));
  return { id, name, amount, unit: 'decisions', share, sentence };
}

function compostPrice(
  campus: Campus,
  { id, name }: Pick<Member, 'id' | 'name'>,
  { decisions }: Plan,
): RepairPrice {
  const amount = decisions.purchases.reduce((sum, p) => {
    const most = gradeSupply(campus.compost, gradeOf(p)).mostBoughtPerSeason;
    return sum + Math.max(0, p.cubicYards - most);
  }, 0);
  const used = compostNeeds(campus, decisions, campusCharges(campus)).reduce(
    (sum, { builds, topDress }) => sum + (builds + topDress) / 100,
    0,
  );
  const sentence = `${counted(amount, 'cubic yard')} more bought than may be, over all years`;
  return { id, name, amount, unit: 'cubic yards', share: amount / Math.max(1, used), sentence };
}

function laborPrice(
  campus: Campus,
  { id, name }: Pick<Member, 'id' | 'name'>,
  real: ReturnType<typeof completePlan>,
): RepairPrice {
  const bySeason = new Map<number, number>();
  const add = (season: number, hours: number) =>
    bySeason.set(season, (bySeason.get(season) ?? 0) + hours / 100);
  for (const { season, hours } of real.plan.unserved) add(season, hours);
  for (const s of real.shortages.filter(({ resource }) => resource === 'labor'))
    add(s.at, s.amount);
  const amount = [...bySeason.values()].reduce((sum, hours) => sum + hours, 0);
  const [worst] = [...bySeason].sort((a, b) => b[1] - a[1]);
  const served = real.plan.labor.reduce((sum, e) => sum + e.hours, 0) / 100;
  const share = amount / Math.max(1, served + amount);
  const at = worst
    ? `, at most ${hoursInWords(worst[1])} in ${seasonLabel(campus.calendar, seasonInstance(campus.calendar, worst[0]))}`
    : '';
  return {
    id,
    name,
    amount,
    unit: 'hours',
    share,
    sentence: `${hoursInWords(amount)} more over all years (${percentInWords(share)} of all work)${at}`,
  };
}
