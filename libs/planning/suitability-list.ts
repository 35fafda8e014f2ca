import type { Campus } from '#domain/campus.js';
import { overallStatus } from '#estimating/gates/gate-result.js';
import { campusSuitability, RANK_DRAWS } from '#estimating/suitability/campus-suitability.js';
import { CRITERIA } from '#estimating/suitability/criteria.data.js';

/** A candidate in the list of all. Points are of 100; `least` and `most` differ where a fact is unknown. */
export interface SuitabilityRow {
  readonly site: string;
  readonly name: string;
  readonly least: number;
  readonly most: number;
  readonly rank: number;
  readonly rankLow: number;
  readonly rankHigh: number;
  /** Share of draws in which it is among the best three. */
  readonly topThree: number;
  /** Of its stated gates together: a score never outweighs one. */
  readonly gates: 'pass' | 'fail' | 'unknown';
  /** Points that each criterion adds; `null`: its fact is unknown. */
  readonly contributions: readonly {
    readonly criterion: string;
    readonly weight: number;
    readonly points: number | null;
  }[];
}

export interface SuitabilityList {
  readonly draws: number;
  readonly sites: readonly SuitabilityRow[];
}

const POINTS = 100;

/** How all candidates are suited, best rank first. */
export function suitabilityList(campus: Campus): SuitabilityList {
  const sites = campusSuitability(campus).map(({ site, score, rank }): SuitabilityRow => ({
    site: site.id,
    name: site.name,
    least: score.least * POINTS,
    most: score.most * POINTS,
    rank: rank.statedRank,
    rankLow: rank.low,
    rankHigh: rank.high,
    topThree: rank.topThree,
    gates: overallStatus(site.gates),
    contributions: score.contributions.map(({ weight, worth }, index) => ({
      criterion: CRITERIA[index]?.name ?? '',
      weight: weight * POINTS,
      points: worth.known ? worth.value * weight * POINTS : null,
    })),
  }));
  return { draws: RANK_DRAWS, sites };
}
