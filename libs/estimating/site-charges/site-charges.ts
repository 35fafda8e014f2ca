import type { BuildType } from '#domain/build-type.js';
import { buildType } from '#domain/campus.js';
import type { Campus } from '#domain/campus.js';
import { COMPONENTS, type Component } from '#domain/component.js';
import type { Site } from '#domain/site.js';
import { hoursToCenti, type CentiHours } from '#units/centihours.js';
import { yardsToCenti, type CentiYards } from '#units/centiyards.js';
import { roundCents, type Cents } from '#units/cents.js';
import { valueOr } from '#units/known.js';
import { coefficient } from '../defaults/coefficients.js';
import { overridesAt } from '../defaults/overrides-at.js';
import { componentAreas } from '../takeoff/component-areas.js';
import { SQUARE_FOOT_INCHES_PER_CUBIC_YARD } from '../takeoff/layers.js';
import { meanInches } from '../takeoff/root-exclusion.js';
import { KeptByType } from './kept.js';
import { typeProfile, type TypeProfile } from './type-profile.js';

/**
 * What one site asks for once it becomes one build type, independent of the year. Hours are
 * effective hours in hundredths, dollars are of the price year.
 */
export interface SiteCharges {
  readonly site: string;
  readonly buildType: string;
  /** Whole square feet. */
  readonly areaSqFt: number;
  readonly prepareHours: CentiHours;
  readonly plantHours: CentiHours;
  /** What each 1,000 square feet of it ask for by age: care and top-dressing. */
  readonly profile: TypeProfile;
  readonly buildCost: Cents;
  /** Supplies and renewal reserve of each season of a year, by order. */
  readonly supplies: readonly Cents[];
  readonly buildCompost: CentiYards;
}

const kept = new KeptByType<SiteCharges>();

/** Charges of a candidate as one of its types, or of an existing site as its own, worked out once. */
export function siteCharges(campus: Campus, site: Site, typeId: string): SiteCharges {
  return kept.of({ campus, site, typeId }, () => makeCharges(campus, site, typeId));
}

function makeCharges(campus: Campus, site: Site, typeId: string): SiteCharges {
  const type = buildType(campus, typeId);
  const areas = componentAreas(site.areaSqFt, type.shares);
  const thousands = site.areaSqFt / 1000;
  return {
    site: site.id,
    buildType: typeId,
    areaSqFt: Math.round(site.areaSqFt),
    prepareHours: hoursToCenti(type.prepareHoursPer1000SqFt * thousands),
    plantHours: hoursToCenti(type.plantHoursPer1000SqFt * thousands),
    profile: typeProfile(campus, type),
    buildCost: roundCents(type.costPerSqFt * site.areaSqFt * costFactor(site)),
    supplies: suppliesBySeason(campus, areas),
    buildCompost: buildCompost({ campus, site, type }),
  };
}

function costFactor(site: Site): number {
  return site.stage === 'candidate' ? site.costFactor : 1;
}

/** A year's supplies, spread over the seasons as the care is. */
function suppliesBySeason(campus: Campus, areas: Record<Component, number>): Cents[] {
  return campus.calendar.seasons.map((season) =>
    roundCents(
      COMPONENTS.reduce((sum, c) => {
        const care = campus.care[c];
        const share = care.seasonShares[season.id] ?? 0;
        return sum + (areas[c] / 1000) * care.suppliesDollars * 100 * share;
      }, 0),
    ),
  );
}

/**
 * Loose compost laid at the build: sum over components of area x mean depth / 324, with waste; inside
 * root protection no deeper than the default or the campus's measured value allows. A root share that is unknown counts as none
 * here, and its gate stays open.
 */
function buildCompost({ campus, site, type }: BuiltSite): CentiYards {
  const protectedShare = valueOr(site.facts.rootProtectedShare, 0);
  const overrides = overridesAt(campus, site);
  const mostInches = coefficient('takeoff.root-protection-compost-inches', overrides);
  const areas = componentAreas(site.areaSqFt, type.shares);
  const inches = (c: Component) =>
    meanInches({
      areaSqFt: areas[c],
      designInches: type.compostInches[c],
      protectedShare,
      mostInches,
    });
  const sqFtInches = COMPONENTS.reduce((sum, c) => sum + areas[c] * inches(c), 0);
  return yardsToCenti(
    (sqFtInches / SQUARE_FOOT_INCHES_PER_CUBIC_YARD) * (1 + campus.materialWaste),
  );
}

interface BuiltSite {
  readonly campus: Campus;
  readonly site: Site;
  readonly type: BuildType;
}
