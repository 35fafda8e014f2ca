import { plannedYears, seasonInstance, yearIndexOf } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { gradeSupply, type CompostGrade } from '#domain/compost.js';
import type { PositionType } from '#domain/labor.js';
import type { Decisions, Placement } from '#domain/plan.js';
import { cents, scaleCents, type Cents } from '#units/cents.js';
import { campusCharges, type CampusCharges } from '../site-charges/campus-charges.js';
import { caredSeasons, existingLife, type Life } from '../site-charges/life.js';
import { KeptByLife } from '../site-charges/kept.js';
import { priceGrowth } from '../site-charges/price-growth.js';
import { seasonDollars, type SeasonDollars } from '../site-charges/season-money.js';
import type { SiteCharges } from '../site-charges/site-charges.js';
import type { PlacedPart } from '../site-charges/placed-parts.js';

/** Dollars that one site asks for in one year, in dollars of that year. */
export interface SiteCost {
  readonly site: string;
  readonly buildType: string;
  readonly yearIndex: number;
  readonly amount: Cents;
}

/** Everything a plan must pay, in dollars of the year. */
export interface MoneyNeeds {
  readonly build: readonly SiteCost[];
  readonly care: readonly SiteCost[];
  /** By year index. */
  readonly positions: readonly Cents[];
  readonly compost: readonly Cents[];
  readonly standing: readonly Cents[];
}

export function moneyNeeds(
  campus: Campus,
  decisions: Decisions,
  charges: CampusCharges = campusCharges(campus),
): MoneyNeeds {
  const of = { campus, charges };
  return {
    build: decisions.placements.flatMap((placement) => buildCosts(of, placement)),
    care: [
      ...campus.existing.flatMap((site) => {
        const part = { charges: charges.of(site.id, site.buildType), changeCost: cents(0) };
        const amounts = careCosts(campus, [{ ...part, life: existingLife(campus, site) }]);
        return costsOf({ site: site.id, buildType: site.buildType }, amounts);
      }),
      ...decisions.placements.flatMap((placement) =>
        costsOf(placement, careCosts(campus, charges.parts(placement))),
      ),
    ],
    positions: byYear(campus, (year) => positionsCost(campus, decisions, year)),
    compost: byYear(campus, (year) => compostCost(campus, decisions, year)),
    standing: byYear(campus, (year) => standingCost(campus, year)),
  };
}

function costsOf(
  { site, buildType }: Pick<Placement, 'site' | 'buildType'>,
  amounts: readonly Cents[],
): SiteCost[] {
  return amounts.flatMap((amount, yearIndex) =>
    amount === 0 ? [] : [{ site, buildType, yearIndex, amount }],
  );
}

function byYear(campus: Campus, cost: (yearIndex: number) => Cents): Cents[] {
  return Array.from({ length: plannedYears(campus.calendar) }, (_, year) => cost(year));
}

interface Charged {
  readonly campus: Campus;
  readonly charges: CampusCharges;
}

/** Bills of building a site, a half being one of its own, each whole in the year of its preparing. */
export function buildCosts({ campus, charges }: Charged, placement: Placement): SiteCost[] {
  const { site, buildType } = placement;
  return buildBills(campus, charges.parts(placement)).map((bill) => ({ site, buildType, ...bill }));
}

/** Years and dollars of the year in which the built pieces of a site are paid for. */
export function buildBills(
  campus: Campus,
  parts: readonly Pick<PlacedPart, 'charges' | 'life'>[],
): { yearIndex: number; amount: Cents }[] {
  return parts.flatMap(({ charges, life }) => {
    if (life.prepared === undefined) return [];
    const { yearIndex } = seasonInstance(campus.calendar, life.prepared);
    const growth = priceGrowth(campus, 'construction', yearIndex);
    return [{ yearIndex, amount: scaleCents(charges.buildCost, growth) }];
  });
}

/** Capital of a site, all its bills together, under the fiscal year of the first. */
export function buildCostOf(
  campus: Campus,
  placement: Placement,
  charges: CampusCharges,
): SiteCost {
  const { site, buildType } = placement;
  const bills = buildCosts({ campus, charges }, placement);
  const amount = cents(bills.reduce((sum, bill) => sum + bill.amount, 0));
  return { site, buildType, yearIndex: yearIndexOf(campus.calendar, placement.year), amount };
}

type CaredPart = Pick<PlacedPart, 'charges' | 'life' | 'changeCost'>;

/**
 * Supplies of a site's pieces by fiscal year of horizon and tail, in dollars of the year, each year
 * rounded once; the cost of a later change falls in the year in which it is made.
 */
export function careCosts(campus: Campus, parts: readonly CaredPart[]): Cents[] {
  const costs = recurringSupplies(campus, parts).map((base, yearIndex) =>
    base === 0 ? cents(0) : scaleCents(base, priceGrowth(campus, 'supplies', yearIndex)),
  );
  for (const { life, changeCost } of parts) {
    if (changeCost <= 0) continue;
    const { yearIndex } = seasonInstance(campus.calendar, life.planted);
    const changed = scaleCents(changeCost, priceGrowth(campus, 'construction', yearIndex));
    const supplies = costs[yearIndex];
    if (supplies !== undefined) costs[yearIndex] = cents(supplies + changed);
  }
  return costs;
}

/** Supplies of a site's pieces in dollars of the price year, by fiscal year. */
export function recurringSupplies(
  campus: Campus,
  parts: readonly Pick<PlacedPart, 'charges' | 'life'>[],
): readonly Cents[] {
  const each = parts.map(({ charges, life }) => baseSupplies(campus, life, charges));
  const [only] = each;
  if (only && each.length === 1) return only;
  return byYear(campus, (year) => cents(each.reduce((sum, years) => sum + (years[year] ?? 0), 0)));
}

const suppliesKept = new KeptByLife<SiteCharges, readonly Cents[]>();

/** Supplies of one site in dollars of the price year, by fiscal year in which they are spent. */
function baseSupplies(campus: Campus, life: Life, of: SiteCharges): readonly Cents[] {
  return suppliesKept.of(of, life, () => suppliesByYear(campus, life, of));
}

function suppliesByYear(campus: Campus, life: Life, of: SiteCharges): readonly Cents[] {
  const years = new Array<number>(plannedYears(campus.calendar)).fill(0);
  const byOrder = suppliesOf(campus, of);
  for (const { order, yearIndex } of caredSeasons(campus.calendar, life)) {
    for (const part of byOrder[order] ?? []) {
      const year = yearIndex + part.yearIndex;
      const sum = years[year];
      if (sum !== undefined) years[year] = sum + part.amount;
    }
  }
  return years as Cents[];
}

const seasonSuppliesKept = new WeakMap<SiteCharges, readonly (readonly SeasonDollars[])[]>();

/**
 * Supplies of a site in each season of a year (order), by years after that of the season: they fall on the
 * same years, told from its own, whenever it comes.
 */
function suppliesOf({ calendar }: Campus, of: SiteCharges): readonly (readonly SeasonDollars[])[] {
  const known = seasonSuppliesKept.get(of);
  if (known) return known;
  const made = calendar.seasons.map((_, order) => {
    const amount = of.supplies[order] ?? cents(0);
    return seasonDollars(calendar, seasonInstance(calendar, order), amount);
  });
  seasonSuppliesKept.set(of, made);
  return made;
}

function positionsCost(campus: Campus, decisions: Decisions, yearIndex: number): Cents {
  let total = 0;
  for (const hire of decisions.hires) {
    const position = campus.positions.find((p) => p.id === hire.position);
    if (!position) throw new RangeError(`no position type ${hire.position} in ${campus.name}`);
    const startYear = yearIndexOf(campus.calendar, hire.year);
    total += hire.count * positionCostIn({ campus, position, startYear, yearIndex });
  }
  return cents(total);
}

/** Cost in one year of one position that starts in `startYear` (index), in dollars of the year. */
export function positionCostIn(of: {
  readonly campus: Campus;
  readonly position: PositionType;
  readonly startYear: number;
  readonly yearIndex: number;
}): Cents {
  const { campus, position, startYear, yearIndex } = of;
  const growth = priceGrowth(campus, 'wages', yearIndex);
  if (yearIndex === startYear) {
    return scaleCents(cents(position.firstYearCost + position.oneTimeCost), growth);
  }
  const stays = position.term === 'recurring' && yearIndex > startYear;
  return stays ? scaleCents(position.annualCost, growth) : cents(0);
}

function compostCost(campus: Campus, decisions: Decisions, yearIndex: number): Cents {
  return cents(
    decisions.purchases
      .filter((p) => seasonInstance(campus.calendar, p.season).yearIndex === yearIndex)
      .reduce((sum, p) => sum + p.cubicYards * compostPrice(campus, yearIndex, p.grade), 0),
  );
}

/** Price of one cubic yard of a grade of compost in a year of the plan. */
export function compostPrice(
  campus: Campus,
  yearIndex: number,
  grade: CompostGrade = 'certified',
): Cents {
  const { pricePerYard } = gradeSupply(campus.compost, grade);
  return scaleCents(pricePerYard, priceGrowth(campus, 'supplies', yearIndex));
}

export function standingCost(campus: Campus, yearIndex: number): Cents {
  return cents(
    campus.standingCosts.reduce(
      (sum, cost) => sum + scaleCents(cost.annual, priceGrowth(campus, cost.escalation, yearIndex)),
      0,
    ),
  );
}
