import type { BenefitCriterion, BenefitMeasure } from '#domain/benefit.js';
import type { BuildType } from '#domain/build-type.js';
import { plannedYears, seasonInstance, yearIndexOf } from '#domain/calendar.js';
import { buildType, type Campus } from '#domain/campus.js';
import type { CandidateSite } from '#domain/site.js';
import { centsToDollars } from '#units/cents.js';
import { milliPoints, type MilliPoints } from '#units/points.js';
import { valueOr } from '#units/known.js';
import { componentAreas } from '../takeoff/component-areas.js';
import { KeptByType } from '../site-charges/kept.js';
import type { Life } from '../site-charges/life.js';
import type { PlacedPart } from '../site-charges/placed-parts.js';
import { careAvoided } from './care-avoided.js';
import { strandedOf } from '../site-charges/stranded.js';

/** Slope from which mowing is counted as hazardous, in percent: planning judgement. */
const STEEP_PERCENT = 10;

/** A site as it would be built. */
export interface SiteAsBuilt {
  readonly site: CandidateSite;
  readonly type: BuildType;
}

/** What one criterion measures on a site as it would be built. */
export function measured(
  campus: Campus,
  { site, type }: SiteAsBuilt,
  criterion: BenefitCriterion,
): number {
  const areas = componentAreas(site.areaSqFt, type.shares);
  const measures: Record<BenefitMeasure, () => number> = {
    'walkers-per-day': () => valueOr(site.facts.walkersPerDay, criterion.whenUnknown),
    'food-area': () => areas['annual-bed'] + areas.woody,
    'habitat-area': () => areas['perennial-bed'] + areas.meadow + areas['rain-garden'],
    'rain-garden-area': () => areas['rain-garden'],
    'converted-area': () => site.areaSqFt,
    'slope-mowing-removed': () => steepArea(site, criterion.whenUnknown),
    teaching: () => areas['annual-bed'],
    'care-avoided': () => careAvoided(campus, type, site.areaSqFt),
  };
  return measures[criterion.measure]();
}

function steepArea(site: CandidateSite, whenUnknown: number): number {
  const { slopePercent } = site.facts;
  if (!slopePercent.known) return whenUnknown;
  return slopePercent.value > STEEP_PERCENT ? site.areaSqFt : 0;
}

const keptPoints = new KeptByType<number>();

/** Points a year: sum over criteria of weight x measure / reference; worked out once. */
export function pointsPerYear(campus: Campus, site: CandidateSite, type: BuildType): number {
  return keptPoints.of({ campus, site, typeId: type.id }, () => sumOfCriteria(campus, site, type));
}

function sumOfCriteria(campus: Campus, site: CandidateSite, type: BuildType): number {
  return campus.benefit.criteria.reduce(
    (sum, c) => sum + (c.weight * measured(campus, { site, type }, c)) / c.reference,
    0,
  );
}

/**
 * Discounted points of a site over horizon and tail: a year's points for every fiscal year after the
 * one in which it is planted, while it is there, each divided by (1 + discount) ^ year index.
 */
export function lifetimePoints(campus: Campus, yearly: number, life: Life): MilliPoints {
  const planted = seasonInstance(campus.calendar, life.planted).yearIndex;
  const gone = Math.floor(life.ends / campus.calendar.seasons.length);
  const last = Math.min(plannedYears(campus.calendar), gone);
  let points = 0;
  for (let year = planted + 1; year < last; year++) {
    points += yearly / (1 + campus.benefit.discount) ** year;
  }
  return milliPoints(Math.round(points * 1000));
}

/**
 * Points of a placed site: of each of its pieces by its share, less what works waste of its capital,
 * counted in the year in which they begin.
 */
export function placementPoints(
  campus: Campus,
  site: CandidateSite,
  parts: readonly PlacedPart[],
): MilliPoints {
  const earned = parts
    .filter(({ share }) => share > 0)
    .reduce((sum, { charges, life, share }) => {
      const yearly = pointsPerYear(campus, site, buildType(campus, charges.buildType));
      return sum + lifetimePoints(campus, yearly * share, life);
    }, 0);
  return milliPoints(earned - strandedPoints(campus, parts));
}

/** Thousandths of a point that stranded cost takes off, at the points that the campus states for it. */
function strandedPoints(campus: Campus, parts: readonly PlacedPart[]): number {
  const { pointsPer1000Stranded = 0, discount } = campus.benefit;
  if (pointsPer1000Stranded === 0) return 0;
  return strandedOf(campus, parts).reduce((sum, { works, amount }) => {
    const year = yearIndexOf(campus.calendar, works.from);
    const points = (centsToDollars(amount) / 1000) * pointsPer1000Stranded;
    return sum + Math.round((points / (1 + discount) ** year) * 1000);
  }, 0);
}
