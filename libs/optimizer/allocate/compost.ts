import type { Campus } from '#domain/campus.js';
import type { CompostGrade, CompostSupply } from '#domain/compost.js';
import { gradeOf, type CompostEntry, type CompostPurchase, type Decisions } from '#domain/plan.js';
import { compostNeeds, type CompostSeason } from '#estimating/plan-needs/compost-needs.js';
import type { CampusCharges } from '#estimating/site-charges/campus-charges.js';
import { centiYards } from '#units/centiyards.js';
import type { Shortage } from './shortage.js';

export interface CompostAllocation {
  readonly compost: readonly CompostEntry[];
  readonly shortages: readonly Shortage[];
}

interface Stock {
  readonly all: number;
  readonly certified: number;
}

/** Compost of the other grade serves first wherever either may, so that most of what is left is certified. */
function seasonEnd({ compost }: Campus, left: Stock): Stock {
  const all = Math.max(0, Math.min(compost.yard, left.all));
  return { all, certified: Math.max(0, Math.min(all, left.certified)) };
}

/** What a season leaves of the stock before it; below 0 where it is short. */
function leftOf({ all, certified }: Stock, needs: CompostSeason): Stock {
  return {
    all: all + needs.made - needs.builds - needs.topDress,
    certified: certified + needs.certified.made - needs.certified.needed,
  };
}

function openingStock({ compost }: Campus): Stock {
  const certified = compost.openingStock;
  return { all: certified + (compost.other?.openingStock ?? 0), certified };
}

function plus({ all, certified }: Stock, { grade, yards }: Bought): Stock {
  const more = yards * 100;
  return { all: all + more, certified: certified + (grade === 'other' ? 0 : more) };
}

interface Bought {
  readonly grade: CompostGrade;
  readonly yards: number;
}

/** Follows the stock season by season; what the yard cannot hold is given away, certified last. */
export function allocateCompost(
  campus: Campus,
  decisions: Decisions,
  charges: CampusCharges,
): CompostAllocation {
  const shortages: Shortage[] = [];
  let stock = openingStock(campus);
  const compost = compostNeeds(campus, decisions, charges).map((needs, season): CompostEntry => {
    const left = decisions.purchases
      .filter((p) => p.season === season)
      .map((p) => ({ grade: gradeOf(p), yards: p.cubicYards }))
      .reduce(plus, leftOf(stock, needs));
    shortages.push(...shortagesOf(left, season));
    stock = seasonEnd(campus, left);
    const givenAway = Math.max(0, left.all - stock.all);
    const otherLeft = Math.max(0, left.all - left.certified);
    return {
      season,
      stock: centiYards(stock.all),
      givenAway: centiYards(givenAway),
      ...(campus.compost.other
        ? {
            certified: {
              givenAway: centiYards(Math.max(0, givenAway - otherLeft)),
              stock: centiYards(stock.certified),
            },
          }
        : {}),
    };
  });
  return { compost, shortages };
}

function shortagesOf({ all, certified }: Stock, at: number): Shortage[] {
  const least = Math.min(all, certified);
  if (least >= 0) return [];
  const grade = certified < all ? { grade: 'certified' as const } : {};
  return [{ resource: 'compost', at, amount: -least, ...grade }];
}

/** Whole cubic yards to buy so that no season is short, as late as possible. */
export function purchasesFor(
  campus: Campus,
  decisions: Omit<Decisions, 'purchases'>,
  charges: CampusCharges,
): CompostPurchase[] {
  const purchases: CompostPurchase[] = [];
  let stock = openingStock(campus);
  compostNeeds(campus, { ...decisions, purchases: [] }, charges).forEach((needs, season) => {
    const left = leftOf(stock, needs);
    const bought = yardsToBuy(campus.compost, left);
    purchases.push(...bought.map(({ grade, yards }) => purchaseOf(season, grade, yards)));
    stock = seasonEnd(campus, bought.reduce(plus, left));
  });
  return purchases;
}

/** A purchase as a plan tells it. */
export function purchaseOf(season: number, grade: CompostGrade, yards: number): CompostPurchase {
  return { season, ...(grade === 'other' ? { grade } : {}), cubicYards: yards };
}

/**
 * Whole cubic yards that make up for what a season lacks: certified ones for the ground that needs
 * them, and for the rest the cheaper grade, the other one up to its limit.
 */
export function yardsToBuy(supply: CompostSupply, left: Stock): Bought[] {
  const { other } = supply;
  let certified = left.certified < 0 ? Math.ceil(-left.certified / 100) : 0;
  const lacking = Math.max(0, Math.ceil(-left.all / 100) - certified);
  const cheaper = other && other.pricePerYard < supply.pricePerYard;
  const plain = cheaper ? Math.min(lacking, other.mostBoughtPerSeason) : 0;
  certified += lacking - plain;
  return [
    { grade: 'certified' as const, yards: certified },
    { grade: 'other' as const, yards: plain },
  ].filter(({ yards }) => yards > 0);
}
