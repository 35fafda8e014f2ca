import {
  ageAt,
  plantIndex,
  plannedSeasons,
  prepareIndex,
  seasonIndex,
  seasonInstance,
  seasonMonths,
  seasonOrder,
  yearIndexOf,
  type Calendar,
} from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { ConstructionConflict, ExistingSite } from '#domain/site.js';
import type { FiscalYear } from '#units/fiscal-year.js';
import { KeptByLife } from './kept.js';

/** When a site is planted, and when works take it away, as running season indexes. */
export interface Life {
  /** Season in which it is prepared; left out for sites planted before the plan. */
  readonly prepared?: number;
  readonly planted: number;
  /** First season in which it is gone; Infinity where nothing takes it. */
  readonly ends: number;
}

/** Life of a site prepared in a fiscal year. */
export function lifeOf(campus: Campus, site: string, year: FiscalYear): Life {
  const yearIndex = yearIndexOf(campus.calendar, year);
  const planted = plantIndex(campus.calendar, yearIndex);
  return {
    prepared: prepareIndex(campus.calendar, yearIndex),
    planted,
    ends: worksStart({ campus, site, planted }),
  };
}

/** Life of a site that was planted before the plan begins. */
export function existingLife(campus: Campus, site: ExistingSite): Life {
  const planted = existingPlantIndex(campus.calendar, site.plantedYear);
  return { planted, ends: worksStart({ campus, site: site.id, planted }) };
}

/** Running index of the planting season that starts in a calendar year; negative before the plan. */
export function existingPlantIndex(calendar: Calendar, plantedYear: number): number {
  const order = seasonOrder(calendar, calendar.plantSeason);
  const inFirstYear = seasonInstance(calendar, seasonIndex(calendar, 0, order));
  const firstMonth = seasonMonths(calendar, inFirstYear)[0];
  if (!firstMonth) throw new RangeError(`season ${calendar.plantSeason} has no months`);
  return inFirstYear.index + (plantedYear - firstMonth.calendarYear) * calendar.seasons.length;
}

interface Planted {
  readonly campus: Campus;
  readonly site: string;
  /** Running index of the season of planting. */
  readonly planted: number;
}

/** The first works that take a site after it is planted, sure or not. */
export function worksAfter({ campus, site, planted }: Planted): ConstructionConflict | undefined {
  const { calendar, construction } = campus;
  const startOf = (c: ConstructionConflict) =>
    seasonIndex(calendar, yearIndexOf(calendar, c.from), 0);
  return construction
    .filter((c) => c.sites.includes(site) && startOf(c) > planted)
    .reduce<ConstructionConflict | undefined>(
      (first, c) => (first && startOf(first) <= startOf(c) ? first : c),
      undefined,
    );
}

/** First season of the first works on a site after it is planted. */
function worksStart(of: Planted): number {
  const { calendar } = of.campus;
  const works = worksAfter(of);
  return works ? seasonIndex(calendar, yearIndexOf(calendar, works.from), 0) : Infinity;
}

/** Age of a site in a season: 1 or more while it is there, 0 before it is planted and after it is gone. */
export function ageInSeason(calendar: Calendar, life: Life, index: number): number {
  if (index < life.planted || index >= life.ends) return 0;
  return ageAt(calendar, life.planted, index);
}

/** A season in which a site is cared for, at an age of 1 or more. */
export interface CaredSeason {
  readonly index: number;
  readonly yearIndex: number;
  readonly order: number;
  readonly age: number;
}

const caredLists = new KeptByLife<Calendar, readonly CaredSeason[]>();

/** Seasons of horizon and tail in which a site is cared for. */
export function caredSeasons(calendar: Calendar, life: Life): readonly CaredSeason[] {
  return caredLists.of(calendar, life, () => caredSeasonsOf(calendar, life));
}

function caredSeasonsOf(calendar: Calendar, life: Life): CaredSeason[] {
  return plannedSeasons(calendar)
    .map(({ index, yearIndex, order }) => {
      const age = ageInSeason(calendar, life, index);
      return { index, yearIndex, order, age };
    })
    .filter(({ age }) => age > 0);
}
