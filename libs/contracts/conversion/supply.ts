import type { BenefitSpec } from '#domain/benefit.js';
import type { CompostSupply } from '#domain/compost.js';
import type { Escalation, StandingCost } from '#domain/money.js';
import { yardsToCenti } from '#units/centiyards.js';
import { dollarsToCents } from '#units/cents.js';
import type { CampusFile } from '../campus-file.schema.js';
import { mapValues, toShare } from './values.js';

export function toCompost(compost: CampusFile['compost']): CompostSupply {
  return {
    made: mapValues(compost.madeCubicYards, yardsToCenti),
    openingStock: yardsToCenti(compost.openingStockCubicYards),
    yard: yardsToCenti(compost.yardCubicYards),
    pricePerYard: dollarsToCents(compost.dollarsPerCubicYard),
    mostBoughtPerSeason: compost.mostBoughtCubicYardsPerSeason,
    topDressSeason: compost.topDressSeason,
    topDressFromAge: compost.topDressFromAge,
  };
}

export function toStandingCost(cost: CampusFile['standingCosts'][number]): StandingCost {
  const { annualDollars, ...same } = cost;
  return { ...same, annual: dollarsToCents(annualDollars) };
}

export function toEscalation(percent: CampusFile['escalationPercent']): Escalation {
  return {
    construction: toShare(percent.construction),
    wages: toShare(percent.wages),
    supplies: toShare(percent.supplies),
  };
}

export function toBenefit({ criteria, discountPercent }: CampusFile['benefit']): BenefitSpec {
  return {
    criteria: criteria.map(({ weightPoints, ...same }) => ({ ...same, weight: weightPoints })),
    discount: toShare(discountPercent),
  };
}
