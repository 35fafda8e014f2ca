import { plantingLabel } from '#domain/calendar.js';
import { buildType, candidate } from '#domain/campus.js';
import { preparedYears, type Placement } from '#domain/plan.js';
import { lifeOf } from '#estimating/site-charges/life.js';
import { freeOfWorks } from '#rules/construction/columns.js';
import { countsIn } from '#rules/counting.js';
import { fiscalYearLabel, type FiscalYear } from '#units/fiscal-year.js';
import { partsIn } from '../built-parts.js';
import type { Ground } from '../ground.js';
import { careHoursAt } from '../labor/busy-season.js';
import { firstYearOnProposed } from '../labor/first-on-proposed.js';
import type { YearRow, YearSite } from '../plan-overview.js';
import { promisedIn } from '../promises/yearly.js';
import { nameOfPart } from '../site-words.js';
import { costBandIn } from './cost-band.js';
import { positionOf } from './hire-rows.js';
import { sitesLeftIn } from './sites-left.js';

/** Every year in which sites may be prepared. */
export function yearRows(ground: Ground): YearRow[] {
  const proposedFrom = firstYearOnProposed(ground) ?? Infinity;
  return ground.years.map((year) => {
    const { placements } = ground.plan.decisions;
    const prepared = placements.filter((p) => preparedYears(p).includes(year));
    const begun = prepared.filter((p) => p.year === year);
    const { promised, kept, countsFromSqFt } = promisedIn(ground, year);
    return {
      year: fiscalYearLabel(year),
      planting: plantingLabel(ground.campus.calendar, year),
      sites: prepared.map((p) =>
        yearSite(ground, p, { year, countsFromSqFt, onProposed: year >= proposedFrom }),
      ),
      blocked: blockedIn(ground, year),
      promiseKept: kept,
      sitesWanted: Math.max(promised, begun.length),
      sitesLeft: sitesLeftIn(ground, year, countsFromSqFt),
      hires: hiresIn(ground, year),
    };
  });
}

interface SiteMarks {
  readonly year: FiscalYear;
  readonly countsFromSqFt: number;
  readonly onProposed: boolean;
}

/** A site, or the half of it that is prepared in the year. */
function yearSite(ground: Ground, placement: Placement, marks: SiteMarks): YearSite {
  const { campus, charges, busy } = ground;
  const { year, countsFromSqFt } = marks;
  const site = candidate(campus, placement.site);
  const share = sum(partsIn(ground, placement, year).map((part) => part.share));
  return {
    site: site.id,
    name: nameOfPart(site.name, placement, year),
    zone: zoneName(ground, site.zone),
    buildType: buildType(campus, placement.buildType).name,
    areaSqFt: share * site.areaSqFt,
    cost: costBandIn(ground, placement, year),
    busySeasonHours: share * careHoursAt(charges, placement, { age: 2, order: busy.order }),
    needsProposedPosition: marks.onProposed,
    countsTowardsPromise: countsIn(placement, site.areaSqFt, countsFromSqFt) === year,
  };
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}

export function zoneName({ campus }: Ground, id: string): string {
  return campus.zones.find((zone) => zone.id === id)?.name ?? id;
}

/** Sites not built by then that sure works keep from being prepared in a year. */
function blockedIn({ campus, placed }: Ground, year: FiscalYear): string[] {
  return campus.candidates
    .filter(({ id }) => (placed.get(id)?.year ?? Infinity) >= year)
    .filter(({ id }) => !freeOfWorks(campus, id, lifeOf(campus, id, year)))
    .map(({ id, name }) => `${id} ${name}`);
}

function hiresIn({ campus, plan }: Ground, year: FiscalYear): string[] {
  return plan.decisions.hires
    .filter((hire) => hire.year === year)
    .map((hire) => `${hire.count} × ${positionOf(campus, hire.position).name}`);
}
