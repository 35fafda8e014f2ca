import type { Campus } from '#domain/campus.js';
import type { CandidateSite } from '#domain/site.js';
import { known, type Known } from '#units/known.js';
import { CRITERIA, type CriterionId } from './criteria.data.js';
import { rankIntervals, type RankInterval } from './rank-intervals.js';
import { type Criterion, type Score, scoreOf } from './score.js';

/** How a candidate is suited, before any gate and any plan: it never outweighs a gate. */
export interface SiteSuitability {
  readonly site: CandidateSite;
  readonly score: Score;
  readonly rank: RankInterval;
}

/** How firmly the weights are held: a weight of 20 % stays within about 4 points (one deviation). */
export const WEIGHT_CONCENTRATION = 100;

export const RANK_DRAWS = 1000;
const RANK_SEED = 1;

/** Weights of the criteria, as shares that total 1: the campus's own where it states them. */
export function criteriaOf(campus: Campus): Criterion[] {
  return CRITERIA.map(({ id, weightPercent, breakpoints }) => ({
    id,
    breakpoints,
    weight:
      (campus.suitabilityWeights ? (campus.suitabilityWeights[id] ?? 0) : weightPercent) / 100,
  }));
}

/** Every candidate with its score and the ranks that it takes as weights and unknown facts vary, best rank first. */
export function campusSuitability(campus: Campus): SiteSuitability[] {
  const criteria = criteriaOf(campus);
  const scored = campus.candidates.map((site) => ({
    site,
    score: scoreOf(criteria, measuresOf(campus, site)),
  }));
  const ranks = rankIntervals(
    scored.map(({ site, score }) => ({
      site: site.id,
      worths: score.contributions.map(({ worth }) => worth),
    })),
    {
      weights: criteria.map(({ weight }) => weight),
      concentration: WEIGHT_CONCENTRATION,
      draws: RANK_DRAWS,
      seed: RANK_SEED,
    },
  );
  return scored
    .flatMap(({ site, score }, index) => {
      const rank = ranks[index];
      return rank ? [{ site, score, rank }] : [];
    })
    .sort((a, b) => a.rank.statedRank - b.rank.statedRank);
}

/** What a candidate measures on each criterion. */
export function measuresOf(
  campus: Campus,
  { facts, zone }: CandidateSite,
): Readonly<Record<CriterionId, Known<number>>> {
  const truck = facts.truckAccess;
  return {
    visibility: facts.walkersPerDay,
    sun: facts.sunHours,
    kitchen: facts.kitchenFeet,
    water: facts.waterFeet,
    soil: facts.organicMatterPercent,
    truck: truck.known ? known(truck.value ? 1 : 0) : truck,
    zone: known(campus.existing.filter((site) => site.zone === zone).length),
  };
}
