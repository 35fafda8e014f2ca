import type { BuildType } from '#domain/build-type.js';
import { buildType } from '#domain/campus.js';
import type { Campus } from '#domain/campus.js';
import { COMPONENTS, FOOD_COMPONENTS, type Component } from '#domain/component.js';
import type { Site } from '#domain/site.js';
import { hoursToCenti, type CentiHours } from '#units/centihours.js';
import { yardsToCenti, type CentiYards } from '#units/centiyards.js';
import { roundCents, type Cents } from '#units/cents.js';
import { valueOr } from '#units/known.js';
import { careHoursPer1000SqFt } from '../care-hours/decay.js';

/** From this age on, in years, care is taken as settled at the level of this age. */
export const SETTLED_AGE = 20;

/** Deepest compost allowed inside root protection, in inches: common practice, no source. */
export const ROOT_ZONE_COMPOST_INCHES = 1;

/** One cubic yard covers 324 square feet one inch deep: 27 cu ft x 12 in/ft, exact. */
const SQFT_INCHES_PER_CUBIC_YARD = 324;

export const CARE_CLASSES = ['care-food', 'care-other', 'harvest'] as const;
export type CareClass = (typeof CARE_CLASSES)[number];

/**
 * What one site asks for once it becomes one build type, independent of the year. Hours are
 * effective hours in hundredths, dollars are of the price year.
 */
export interface SiteCharges {
  readonly site: string;
  readonly buildType: string;
  readonly areaSqFt: number;
  readonly prepareHours: CentiHours;
  readonly plantHours: CentiHours;
  /** Hours of a class in the season at `order` of a fiscal year, at an age of 1 or more; 0 before. */
  care(taskClass: CareClass, age: number, order: number): CentiHours;
  readonly buildCost: Cents;
  /** Supplies and renewal reserve of each season of a year, by order. */
  readonly supplies: readonly Cents[];
  readonly buildCompost: CentiYards;
  /** Compost of one year's top-dressing. */
  readonly topDress: CentiYards;
}

/** Square feet of each component when a site becomes a type. */
export function componentAreas(site: Site, type: BuildType): Record<Component, number> {
  const areas = {} as Record<Component, number>;
  for (const c of COMPONENTS) areas[c] = site.areaSqFt * type.shares[c];
  return areas;
}

/** Charges of a candidate as one of its types, or of an existing site as its own. */
export function siteCharges(campus: Campus, site: Site, typeId: string): SiteCharges {
  const type = buildType(campus, typeId);
  const areas = componentAreas(site, type);
  const thousands = site.areaSqFt / 1000;
  const table = careTable(campus, areas);
  return {
    site: site.id,
    buildType: typeId,
    areaSqFt: site.areaSqFt,
    prepareHours: hoursToCenti(type.prepareHoursPer1000SqFt * thousands),
    plantHours: hoursToCenti(type.plantHoursPer1000SqFt * thousands),
    care: (taskClass, age, order) => tableHours(table, { taskClass, age, order }),
    buildCost: roundCents(type.costPerSqFt * site.areaSqFt * costFactor(site)),
    supplies: suppliesBySeason(campus, areas),
    buildCompost: buildCompost({ campus, site, type }),
    topDress: topDress(campus, areas),
  };
}

function costFactor(site: Site): number {
  return site.stage === 'candidate' ? site.costFactor : 1;
}

type CareTable = Readonly<Record<CareClass, readonly (readonly CentiHours[])[]>>;

function tableHours(
  table: CareTable,
  at: { taskClass: CareClass; age: number; order: number },
): CentiHours {
  if (at.age < 1) return 0 as CentiHours;
  return table[at.taskClass][Math.min(at.age, SETTLED_AGE) - 1]?.[at.order] ?? (0 as CentiHours);
}

/** Hundredths of hours by class, age from 1 to settled, and season order. */
function careTable(campus: Campus, areas: Record<Component, number>): CareTable {
  const rows = (hours: (age: number, season: string) => number) =>
    Array.from({ length: SETTLED_AGE }, (_, i) =>
      campus.calendar.seasons.map((season) => hoursToCenti(hours(i + 1, season.id))),
    );
  const careOf = (components: readonly Component[]) => (age: number, season: string) =>
    components.reduce((sum, c) => sum + careHours({ campus, areas, c }, age, season), 0);
  const food = COMPONENTS.filter((c) => FOOD_COMPONENTS.has(c));
  const other = COMPONENTS.filter((c) => !FOOD_COMPONENTS.has(c));
  return {
    'care-food': rows(careOf(food)),
    'care-other': rows(careOf(other)),
    harvest: rows((age, season) =>
      COMPONENTS.reduce((sum, c) => sum + harvestHours({ campus, areas, c }, age, season), 0),
    ),
  };
}

interface OneComponent {
  readonly campus: Campus;
  readonly areas: Record<Component, number>;
  readonly c: Component;
}

function careHours({ campus, areas, c }: OneComponent, age: number, season: string): number {
  const care = campus.care[c];
  const share = care.seasonShares[season] ?? 0;
  return (areas[c] / 1000) * careHoursPer1000SqFt(care, age) * share;
}

function harvestHours({ campus, areas, c }: OneComponent, age: number, season: string): number {
  const care = campus.care[c];
  const ramp = care.bearing[Math.min(age, care.bearing.length) - 1] ?? 0;
  return (areas[c] / 1000) * care.harvestHours * ramp * (care.harvestSeasonShares[season] ?? 0);
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
 * Loose compost laid at the build: sum over components of area x depth / 324, with waste; inside
 * root protection no deeper than ROOT_ZONE_COMPOST_INCHES. A root share that is unknown counts as
 * none here, and its gate stays open.
 */
function buildCompost(of: { campus: Campus; site: Site; type: BuildType }): CentiYards {
  const rootShare = valueOr(of.site.facts.rootProtectedShare, 0);
  const areas = componentAreas(of.site, of.type);
  const inches = (c: Component) => {
    const full = of.type.compostInches[c];
    return full * (1 - rootShare) + Math.min(full, ROOT_ZONE_COMPOST_INCHES) * rootShare;
  };
  const sqFtInches = COMPONENTS.reduce((sum, c) => sum + areas[c] * inches(c), 0);
  return yardsToCenti((sqFtInches / SQFT_INCHES_PER_CUBIC_YARD) * (1 + of.campus.materialWaste));
}

function topDress(campus: Campus, areas: Record<Component, number>): CentiYards {
  const sqFtInches = COMPONENTS.reduce((sum, c) => sum + areas[c] * campus.care[c].topDressInches, 0);
  return yardsToCenti(sqFtInches / SQFT_INCHES_PER_CUBIC_YARD);
}
