import { seasonInstance, seasonLabel } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { gradeOf, type CompostEntry, type Plan } from '#domain/plan.js';
import { compostNeeds } from '#estimating/plan-needs/compost-needs.js';
import { centiToYards, centiYards } from '#units/centiyards.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import type { Ground } from '../ground.js';
import type { CompostRow, GradeRow } from '../plan-overview.js';

/** Compost of every season of the plan: stock before + made + bought = used + given away + stock. */
export function compostRows({ campus, plan, charges }: Ground): CompostRow[] {
  const { calendar } = campus;
  const needs = compostNeeds(campus, plan.decisions, charges);
  const entries = new Map(plan.compost.map((entry) => [entry.season, entry]));
  const bought = boughtBySeason(plan);
  return needs.slice(0, calendar.horizonYears * calendar.seasons.length).map((season, index) => {
    const instance = seasonInstance(calendar, index);
    const { certified = 0, other = 0 } = bought.get(index) ?? {};
    const entry = entries.get(index) ?? NOTHING;
    const before = index === 0 ? openingEntry(campus) : (entries.get(index - 1) ?? NOTHING);
    const made = { all: season.made, certified: season.certified.made };
    return {
      label: seasonLabel(calendar, instance),
      season: instance.season.id,
      year: fiscalYearLabel(instance.year),
      made: centiToYards(season.made),
      bought: certified + other,
      builds: centiToYards(season.builds),
      topDress: centiToYards(season.topDress),
      givenAway: centiToYards(entry.givenAway),
      stock: centiToYards(entry.stock),
      grades: campus.compost.other
        ? gradesOf({ before, entry, made, bought: { certified, other } })
        : null,
    };
  });
}

type Heap = Pick<CompostEntry, 'givenAway' | 'stock' | 'certified'>;

const NOTHING: Heap = { givenAway: centiYards(0), stock: centiYards(0) };

function openingEntry({ compost: { openingStock, other } }: Campus): Heap {
  const none = centiYards(0);
  const stock = centiYards(openingStock + (other?.openingStock ?? 0));
  return { givenAway: none, stock, certified: { givenAway: none, stock: openingStock } };
}

interface Bought {
  readonly certified: number;
  readonly other: number;
}

/** Whole cubic yards of each grade, by season. */
function boughtBySeason({ decisions }: Plan): Map<number, Bought> {
  const bought = new Map<number, Bought>();
  for (const purchase of decisions.purchases) {
    const before = bought.get(purchase.season) ?? { certified: 0, other: 0 };
    const grade = gradeOf(purchase);
    bought.set(purchase.season, { ...before, [grade]: before[grade] + purchase.cubicYards });
  }
  return bought;
}

/** What is used of a grade is what is gone of it and was not given away. */
function gradesOf(of: {
  readonly before: Heap;
  readonly entry: Heap;
  readonly made: { readonly all: number; readonly certified: number };
  readonly bought: Bought;
}): { certified: GradeRow; other: GradeRow } {
  const { before, entry, made, bought } = of;
  const grade = (heap: (of: Heap) => { stock: number; givenAway: number }, came: number[]) => {
    const [madeOf = 0, boughtOf = 0] = came;
    const { stock, givenAway } = heap(entry);
    const used = heap(before).stock + madeOf + boughtOf * 100 - givenAway - stock;
    const yards = (amount: number) => centiToYards(centiYards(amount));
    return {
      made: yards(madeOf),
      bought: boughtOf,
      used: yards(used),
      givenAway: yards(givenAway),
      stock: yards(stock),
    };
  };
  const certified = (heap: Heap) => heap.certified ?? heap;
  const other = (heap: Heap) => ({
    stock: heap.stock - certified(heap).stock,
    givenAway: heap.givenAway - certified(heap).givenAway,
  });
  return {
    certified: grade(certified, [made.certified, bought.certified]),
    other: grade(other, [made.all - made.certified, bought.other]),
  };
}
