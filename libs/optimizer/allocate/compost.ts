import type { Campus } from '#domain/campus.js';
import type { CompostEntry, Decisions } from '#domain/plan.js';
import { compostNeeds } from '#estimating/plan-needs/compost-needs.js';
import type { CampusCharges } from '#estimating/site-charges/campus-charges.js';
import { centiYards } from '#units/centiyards.js';
import type { Shortage } from './shortage.js';

export interface CompostAllocation {
  readonly compost: readonly CompostEntry[];
  readonly shortages: readonly Shortage[];
}

/** Follows the stock season by season; what the yard cannot hold is given away. */
export function allocateCompost(
  campus: Campus,
  decisions: Decisions,
  charges: CampusCharges,
): CompostAllocation {
  const bought = new Map(decisions.purchases.map((p) => [p.season, p.cubicYards * 100]));
  const shortages: Shortage[] = [];
  let stock: number = campus.compost.openingStock;
  const compost = compostNeeds(campus, decisions, charges).map(
    ({ made, builds, topDress }, season) => {
      const left = stock + made + (bought.get(season) ?? 0) - builds - topDress;
      if (left < 0) shortages.push({ resource: 'compost', at: season, amount: -left });
      stock = Math.max(0, Math.min(campus.compost.yard, left));
      return { season, stock: centiYards(stock), givenAway: centiYards(Math.max(0, left - stock)) };
    },
  );
  return { compost, shortages };
}

/** Whole cubic yards to buy so that no season is short, as late as possible. */
export function purchasesFor(
  campus: Campus,
  decisions: Omit<Decisions, 'purchases'>,
  charges: CampusCharges,
): { season: number; cubicYards: number }[] {
  const purchases: { season: number; cubicYards: number }[] = [];
  let stock: number = campus.compost.openingStock;
  compostNeeds(campus, { ...decisions, purchases: [] }, charges).forEach((needs, season) => {
    const left = stock + needs.made - needs.builds - needs.topDress;
    const cubicYards = left < 0 ? Math.ceil(-left / 100) : 0;
    if (cubicYards > 0) purchases.push({ season, cubicYards });
    stock = Math.min(campus.compost.yard, left + cubicYards * 100);
  });
  return purchases;
}
