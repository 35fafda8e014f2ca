import { ageAt, plannedSeasons, seasonInstance, type Calendar } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { TASK_CLASSES, type TaskClass } from '#domain/labor.js';
import { topDressSeasons } from '#estimating/plan-needs/compost-needs.js';
import { buildBills, careCosts } from '#estimating/plan-needs/money-needs.js';
import type { Payable } from '#estimating/purses/purses.js';
import type { PlacedPart } from '#estimating/site-charges/placed-parts.js';
import {
  CARE_CLASSES,
  FINE_PER_HUNDREDTH,
  hundredthsFor,
  type TypeProfile,
} from '#estimating/site-charges/type-profile.js';
import type { Lifecycle } from '#rules/columns.js';

export const CLASS_COUNT = TASK_CLASSES.length;

/** Amounts at places of a flat list, which may come again: they are added to a plan's totals and taken off again. */
export interface Amounts {
  readonly at: Int32Array;
  readonly amounts: Float64Array;
}

/** Care of one piece of ground, season after season from its planting to its end or that of the plan. */
export interface CareRun {
  readonly planted: number;
  /** Seasons of care. */
  readonly length: number;
  readonly areaSqFt: number;
  readonly hours: CareSequence;
}

/** Care of one square foot by seasons since its planting; one list for all ground of a type. */
export interface CareSequence {
  /** Fine parts of an hour at [season x care classes]. */
  readonly byClass: Float64Array;
  /** Hundredths of an hour of all classes together, by season. */
  readonly all: Float64Array;
}

/** What one life asks for. */
export interface LifeCharges {
  /** Hours of preparing and planting, in fine parts, at [season x classes]. */
  readonly works: Amounts;
  readonly care: readonly CareRun[];
  /** Compost by season, in fine parts of a cubic yard, and what of it must be certified. */
  readonly compost: Amounts;
  readonly certified: Amounts;
  /** Cents at [sink x years + year]. */
  readonly bills: Amounts;
}

/** Cost of one sink in one year, in cents. */
export type Due = readonly [sink: number, year: number, cents: number];

type Pair = readonly [at: number, amount: number];

const NOTHING: Amounts = { at: new Int32Array(), amounts: new Float64Array() };

function amountsOf(pairs: readonly Pair[]): Amounts {
  const at = new Int32Array(pairs.length);
  const amounts = new Float64Array(pairs.length);
  let count = 0;
  for (const [place, amount] of pairs) {
    if (amount === 0) continue;
    at[count] = place;
    amounts[count] = amount;
    count += 1;
  }
  if (count === 0) return NOTHING;
  return { at: at.subarray(0, count), amounts: amounts.subarray(0, count) };
}

/** Dues as amounts at [sink x years + year]. */
export function billsOf(dues: readonly Due[], years: number): Amounts {
  return amountsOf(dues.map(([sink, year, cents]): Pair => [sink * years + year, cents]));
}

export interface ChargesOf {
  readonly campus: Campus;
  /** Planned years. */
  readonly years: number;
  readonly sinkOf: (cost: Payable) => number;
}

/** Works out charges of lives, each when it is first asked for, and then keeps them. */
export function keptCharges(of: ChargesOf): (lifecycle: Lifecycle) => LifeCharges {
  const kept = new Map<Lifecycle, LifeCharges>();
  const sequenceOf = careSequences(of.campus);
  const places = plannedSeasons(of.campus.calendar).length * CLASS_COUNT;
  return (lifecycle) => {
    const found = kept.get(lifecycle);
    if (found) return found;
    const { parts } = lifecycle;
    const made = {
      works: amountsOf(parts.flatMap(worksOf).filter(([at]) => at < places)),
      care: parts.map((part) => careRun(of.campus, part, sequenceOf)),
      ...compostOf(of.campus, parts),
      bills: billsOf(duesOf(of, lifecycle), of.years),
    };
    kept.set(lifecycle, made);
    return made;
  };
}

function worksOf({ life, charges }: PlacedPart): [number, number][] {
  const at = (season: number, c: TaskClass) => season * CLASS_COUNT + TASK_CLASSES.indexOf(c);
  const planted: [number, number] = [
    at(life.planted, 'plant'),
    charges.plantHours * FINE_PER_HUNDREDTH,
  ];
  if (life.prepared === undefined) return [planted];
  return [[at(life.prepared, 'prepare'), charges.prepareHours * FINE_PER_HUNDREDTH], planted];
}

type SequenceOf = (profile: TypeProfile, plantOrder: number) => CareSequence;

function careRun(campus: Campus, { life, charges }: PlacedPart, sequenceOf: SequenceOf): CareRun {
  const { calendar } = campus;
  const end = Math.min(plannedSeasons(calendar).length, life.ends);
  const { order } = seasonInstance(calendar, life.planted);
  return {
    planted: life.planted,
    length: Math.max(0, end - life.planted),
    areaSqFt: charges.areaSqFt,
    hours: sequenceOf(charges.profile, order),
  };
}

function careSequences({ calendar }: Campus): SequenceOf {
  const kept = new Map<TypeProfile, CareSequence[]>();
  return (profile, plantOrder) => {
    const byOrder = kept.get(profile) ?? [];
    kept.set(profile, byOrder);
    return (byOrder[plantOrder] ??= careSequence(profile, calendar, plantOrder));
  };
}

function careSequence(profile: TypeProfile, calendar: Calendar, plantOrder: number): CareSequence {
  const seasons = plannedSeasons(calendar).length;
  const classes = CARE_CLASSES.length;
  const byClass = new Float64Array(seasons * classes);
  const all = new Float64Array(seasons);
  for (let season = 0; season < seasons; season++) {
    const age = ageAt(calendar, 0, season);
    const order = (plantOrder + season) % calendar.seasons.length;
    CARE_CLASSES.forEach((c, i) => {
      const fine = profile.care(c, age, order);
      byClass[season * classes + i] = fine;
      all[season] = (all[season] ?? 0) + fine / FINE_PER_HUNDREDTH;
    });
  }
  return { byClass, all };
}

function compostOf(
  campus: Campus,
  parts: readonly PlacedPart[],
): Pick<LifeCharges, 'compost' | 'certified'> {
  const needCertified = parts.filter((p) => p.charges.profile.compostGrade === 'certified');
  const draws = (of: readonly PlacedPart[]) => amountsOf(of.flatMap((p) => drawsOf(campus, p)));
  const compost = draws(parts);
  const certified = needCertified.length === parts.length ? compost : draws(needCertified);
  return { compost, certified };
}

function drawsOf(campus: Campus, { life, charges }: PlacedPart): Pair[] {
  const each = charges.areaSqFt * charges.profile.topDress;
  const dressed = topDressSeasons(campus, life).map((season): Pair => [season, each]);
  if (life.prepared === undefined) return dressed;
  return [[life.prepared, charges.buildCompost * FINE_PER_HUNDREDTH], ...dressed];
}

function duesOf({ campus, sinkOf }: ChargesOf, { site, buildType, parts }: Lifecycle): Due[] {
  const build = sinkOf({ line: 'build', site, buildType });
  const care = sinkOf({ line: 'care', site, buildType });
  return [
    ...buildBills(campus, parts).map(({ yearIndex, amount }): Due => [build, yearIndex, amount]),
    ...careCosts(campus, parts).map((amount, year): Due => [care, year, amount]),
  ];
}

export function addAmounts(totals: Float64Array, { at, amounts }: Amounts, times: number): void {
  for (let i = 0; i < at.length; i++) {
    const place = at[i] ?? 0;
    totals[place] = (totals[place] ?? 0) + times * (amounts[i] ?? 0);
  }
}

/** Places of the classes of care among all classes. */
const [FOOD = 0, OTHER = 0, HARVEST = 0] = CARE_CLASSES.map((c) => TASK_CLASSES.indexOf(c));

/** Totals of a plan that lives are added to. */
export interface Totals {
  /** Fine parts of an hour at [season x classes]. */
  readonly needs: Float64Array;
  /** Hundredths of an hour to spare by season, at least. */
  readonly room: Float64Array;
}

/** Adds the hours of a life `sign` times. What is taken off leaves `room` as it was: it is no more than there is. */
export function addHours(totals: Totals, { works, care }: LifeCharges, sign: 1 | -1): void {
  const { needs, room } = totals;
  const { at, amounts } = works;
  for (let i = 0; i < at.length; i++) {
    const place = at[i] ?? 0;
    const amount = amounts[i] ?? 0;
    needs[place] = (needs[place] ?? 0) + sign * amount;
    if (sign < 0) continue;
    const season = Math.floor(place / CLASS_COUNT);
    room[season] = (room[season] ?? 0) - hundredthsFor(amount);
  }
  for (const run of care) {
    addCare(needs, run, sign * run.areaSqFt);
    if (sign > 0) takeRoom(room, run);
  }
}

function addCare(needs: Float64Array, { planted, length, hours }: CareRun, area: number): void {
  const { byClass } = hours;
  let at = planted * CLASS_COUNT;
  let from = 0;
  for (let season = 0; season < length; season++) {
    needs[at + FOOD] = (needs[at + FOOD] ?? 0) + area * (byClass[from] ?? 0);
    needs[at + OTHER] = (needs[at + OTHER] ?? 0) + area * (byClass[from + 1] ?? 0);
    needs[at + HARVEST] = (needs[at + HARVEST] ?? 0) + area * (byClass[from + 2] ?? 0);
    at += CLASS_COUNT;
    from += CARE_CLASSES.length;
  }
}

/** Each class may be rounded up to a hundredth more. */
function takeRoom(room: Float64Array, { planted, length, areaSqFt, hours }: CareRun): void {
  const { all } = hours;
  for (let season = 0; season < length; season++) {
    const at = planted + season;
    room[at] = (room[at] ?? 0) - areaSqFt * (all[season] ?? 0) - CARE_CLASSES.length;
  }
}
