import type { BenefitSpec } from '#domain/benefit.js';
import type { CompostSupply, GradeSupply } from '#domain/compost.js';
import type { Escalation, StandingCost } from '#domain/money.js';
import { yardsToCenti } from '#units/centiyards.js';
import { dollarsToCents } from '#units/cents.js';
import type { CampusFile } from '../campus-file.schema.js';
import { mapValues, optional, toShare } from './values.js';

export function toCompost(compost: CampusFile['compost']): CompostSupply {
  return {
    ...toGrade(compost),
    yard: yardsToCenti(compost.yardCubicYards),
    topDressSeason: compost.topDressSeason,
    topDressFromAge: compost.topDressFromAge,
    ...optional('other', compost.otherGrade && toGrade(compost.otherGrade)),
  };
}

function toGrade(grade: NonNullable<CampusFile['compost']['otherGrade']>): GradeSupply {
  return {
    made: mapValues(grade.madeCubicYards, yardsToCenti),
    openingStock: yardsToCenti(grade.openingStockCubicYards),
    pricePerYard: dollarsToCents(grade.dollarsPerCubicYard),
    mostBoughtPerSeason: grade.mostBoughtCubicYardsPerSeason,
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

/** Planning judgement, no published authority: what $1,000 of wasted capital weighs, in points. */
const STRANDED_POINTS_PER_1000 = 1;

/** Benefit with the weights of the criteria; the position that a file names is for the loader to take. */
export function toBenefit(benefit: CampusFile['benefit']): BenefitSpec {
  const { criteria, discountPercent, positions, strandedPointsPer1000Dollars: stranded } = benefit;
  return {
    pointsPer1000Stranded: stranded ?? STRANDED_POINTS_PER_1000,
    ...optional(
      'positions',
      positions?.map(({ weightPoints, ...same }) => ({ ...same, weights: weightPoints })),
    ),
    criteria: criteria.map(({ weightPoints, ...same }) => ({ ...same, weight: weightPoints })),
    discount: toShare(discountPercent),
  };
}
