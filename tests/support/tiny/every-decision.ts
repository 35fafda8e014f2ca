import { seasonIndex, seasonOrder, yearAt } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { Decisions, Placement } from '#domain/plan.js';
import { yearsLater } from '#units/fiscal-year.js';

/** How far the enumeration goes beside the placements. */
export interface Reach {
  /** Compost bought in each season of preparing: every one of these. Left out: none. */
  readonly purchases?: readonly number[];
  /** The same of the other grade. */
  readonly otherPurchases?: readonly number[];
}

/**
 * Every combination of placements (eligible or not), hires of at most one of each position a year,
 * all work days held, and purchases, of a tiny campus.
 */
export function everyDecision(campus: Campus, reach: Reach = {}): Decisions[] {
  const workDays = heldEveryYear(campus);
  return product([
    placementSets(campus),
    hireSets(campus),
    purchaseSets(campus, reach.purchases, {}),
    purchaseSets(campus, reach.otherPurchases, { grade: 'other' }),
  ]).map(([placements, hires, certified, other]) => ({
    placements: placements as Decisions['placements'],
    hires: hires as Decisions['hires'],
    purchases: [...(certified as Purchases), ...(other as Purchases)],
    workDays,
  }));
}

function product(lists: readonly (readonly unknown[])[]): unknown[][] {
  return lists.reduce<unknown[][]>(
    (sets, list) => sets.flatMap((set) => list.map((item) => [...set, item])),
    [[]],
  );
}

function placementSets(campus: Campus): Placement[][] {
  const years = Array.from({ length: campus.calendar.horizonYears }, (_, i) =>
    yearAt(campus.calendar, i),
  );
  const choices = campus.candidates.map((site) => [
    [] as Placement[],
    ...campus.buildTypes.flatMap((type) =>
      years.flatMap((year) =>
        variants(campus, { site: site.id, buildType: type.id, year }).map((p) => [p]),
      ),
    ),
  ]);
  return product(choices).map((set) => (set as Placement[][]).flat());
}

/** A placement at once and in halves, unchanged and changed at several ages, allowed or not. */
function variants(campus: Campus, whole: Placement): Placement[] {
  const halves = campus.candidates.some((s) => s.phasing) ? [1, 2] : [];
  const built = [
    whole,
    ...halves.map((apart) => ({ ...whole, secondHalf: yearsLater(whole.year, apart) })),
  ];
  const changes = (campus.laterChanges ?? []).flatMap(({ id }) =>
    [5, 6, 8].map((age) => ({ id, age })),
  );
  return built.flatMap((p) => [p, ...changes.map((change) => ({ ...p, change }))]);
}

function hireSets(campus: Campus): Decisions['hires'][] {
  const years = Array.from({ length: campus.calendar.horizonYears }, (_, i) =>
    yearAt(campus.calendar, i),
  );
  const each = campus.positions.flatMap((p) =>
    years.map((year) => [[], [{ position: p.id, year, count: 1 }]]),
  );
  return product(each).map((set) => (set as Decisions['hires'][]).flat());
}

type Purchases = Decisions['purchases'];

function purchaseSets(
  campus: Campus,
  purchases: readonly number[] | undefined,
  grade: Pick<Purchases[number], 'grade'>,
): Purchases[] {
  if (!purchases) return [[]];
  const order = seasonOrder(campus.calendar, campus.calendar.prepareSeason);
  const seasons = Array.from({ length: campus.calendar.horizonYears }, (_, y) =>
    seasonIndex(campus.calendar, y, order),
  );
  const each = seasons.map((season) =>
    purchases.map((cubicYards) => (cubicYards > 0 ? [{ season, ...grade, cubicYards }] : [])),
  );
  return product(each).map((set) => (set as Purchases[]).flat());
}

function heldEveryYear(campus: Campus): Decisions['workDays'] {
  const years = Array.from({ length: campus.calendar.horizonYears + 5 }, (_, i) =>
    yearAt(campus.calendar, i),
  );
  return campus.workDays.flatMap((day) =>
    years.map((year) => ({ workDay: day.id, year, count: day.mostPerSeason })),
  );
}
