import { plannedYears, seasonInstance, yearIndexOf } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { PositionType } from '#domain/labor.js';
import type { Decisions, Placement } from '#domain/plan.js';
import { cents, scaleCents, type Cents } from '#units/cents.js';
import { campusCharges, type CampusCharges } from '../site-charges/campus-charges.js';
import { caredSeasons, existingLife, lifeOf, type Life } from '../site-charges/life.js';
import { priceGrowth } from '../site-charges/price-growth.js';
import { seasonDollars } from '../site-charges/season-money.js';
import type { SiteCharges } from '../site-charges/site-charges.js';

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
  return {
    build: decisions.placements.map((placement) => buildCostOf(campus, placement, charges)),
    care: [
      ...campus.existing.flatMap((site) =>
        siteCare(campus, existingLife(campus, site), charges.of(site.id, site.buildType)),
      ),
      ...decisions.placements.flatMap(({ site, buildType, year }) =>
        siteCare(campus, lifeOf(campus, site, year), charges.of(site, buildType)),
      ),
    ],
    positions: byYear(campus, (year) => positionsCost(campus, decisions, year)),
    compost: byYear(campus, (year) => compostCost(campus, decisions, year)),
    standing: byYear(campus, (year) => standingCost(campus, year)),
  };
}

function byYear(campus: Campus, cost: (yearIndex: number) => Cents): Cents[] {
  return Array.from({ length: plannedYears(campus.calendar) }, (_, year) => cost(year));
}

/** Capital of a site, charged whole to the fiscal year in which it is prepared. */
export function buildCostOf(
  campus: Campus,
  placement: Placement,
  charges: CampusCharges,
): SiteCost {
  const { site, buildType } = placement;
  const yearIndex = yearIndexOf(campus.calendar, placement.year);
  const amount = escalatedBuildCost(campus, charges.of(site, buildType), yearIndex);
  return { site, buildType, yearIndex, amount };
}

export function escalatedBuildCost(campus: Campus, of: SiteCharges, yearIndex: number): Cents {
  return scaleCents(of.buildCost, priceGrowth(campus, 'construction', yearIndex));
}

/** Supplies of one site by fiscal year of horizon and tail, each year rounded once. */
function siteCare(campus: Campus, life: Life, of: SiteCharges): SiteCost[] {
  return baseSupplies(campus, life, of).flatMap((base, yearIndex) =>
    base === 0
      ? []
      : [
          {
            site: of.site,
            buildType: of.buildType,
            yearIndex,
            amount: scaleCents(base, priceGrowth(campus, 'supplies', yearIndex)),
          },
        ],
  );
}

const suppliesKept = new WeakMap<SiteCharges, Map<string, readonly Cents[]>>();

/** Supplies of one site in dollars of the price year, by fiscal year in which they are spent. */
export function baseSupplies(campus: Campus, life: Life, of: SiteCharges): readonly Cents[] {
  const known = suppliesKept.get(of) ?? new Map<string, readonly Cents[]>();
  suppliesKept.set(of, known);
  const key = `${life.planted} ${life.ends}`;
  const found = known.get(key);
  if (found) return found;
  const made = suppliesByYear(campus, life, of);
  known.set(key, made);
  return made;
}

function suppliesByYear(campus: Campus, life: Life, of: SiteCharges): Cents[] {
  const years = byYear(campus, () => cents(0));
  for (const { index, order } of caredSeasons(campus.calendar, life)) {
    const instance = seasonInstance(campus.calendar, index);
    for (const part of seasonDollars(campus.calendar, instance, of.supplies[order] ?? cents(0))) {
      const sum = years[part.yearIndex];
      if (sum !== undefined) years[part.yearIndex] = cents(sum + part.amount);
    }
  }
  return years;
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
  const yards = decisions.purchases
    .filter((p) => seasonInstance(campus.calendar, p.season).yearIndex === yearIndex)
    .reduce((sum, p) => sum + p.cubicYards, 0);
  return cents(yards * compostPrice(campus, yearIndex));
}

/** Price of one cubic yard of compost in a year of the plan. */
export function compostPrice(campus: Campus, yearIndex: number): Cents {
  return scaleCents(campus.compost.pricePerYard, priceGrowth(campus, 'supplies', yearIndex));
}

export function standingCost(campus: Campus, yearIndex: number): Cents {
  return cents(
    campus.standingCosts.reduce(
      (sum, cost) => sum + scaleCents(cost.annual, priceGrowth(campus, cost.escalation, yearIndex)),
      0,
    ),
  );
}
