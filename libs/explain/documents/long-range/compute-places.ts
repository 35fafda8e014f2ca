import { buildType, type Campus } from '#domain/campus.js';
import type { CandidateSite, Position } from '#domain/site.js';
import { fiscalYearLabel, yearsLater } from '#units/fiscal-year.js';
import type { Ground } from '../../overview/ground.js';
import { laterInWords } from '../../overview/later-words.js';
import { careHoursAt } from '../../overview/labor/busy-season.js';
import { costBandOf } from '../../overview/years/cost-band.js';
import { zoneName } from '../../overview/years/year-rows.js';
import { feetRing } from '../feet-plane.js';
import type { CampusPlaces, SitePlace } from './campus-places.js';

/** Sites prepared within this many years from the first are told as coming soon. */
export const SOON_YEARS = 5;

export function campusPlaces(ground: Ground): CampusPlaces {
  const { campus } = ground;
  const origin = middleOf(campus);
  const candidates = campus.candidates.map((site) => placeOf(ground, site, origin));
  const planned = candidates.filter(({ year }) => year !== null);
  return {
    zones: campus.zones.flatMap(({ name, boundary }) =>
      boundary === undefined ? [] : [{ name, ring: feetRing(origin, boundary) }],
    ),
    sites: [
      ...planned.sort(
        (a, b) => yearOf(ground, a) - yearOf(ground, b) || (a.site < b.site ? -1 : 1),
      ),
      ...candidates.filter(({ year }) => year === null),
      ...existingPlaces(ground, origin),
    ],
  };
}

function yearOf({ placed }: Ground, { site }: SitePlace): number {
  return placed.get(site)?.year ?? Infinity;
}

function placeOf(ground: Ground, site: CandidateSite, origin: Position): SitePlace {
  const { campus, charges, busy, placed } = ground;
  const placement = placed.get(site.id);
  const base = {
    site: site.id,
    name: site.name,
    zone: zoneName(ground, site.zone),
    ring: feetRing(origin, site.boundary),
    areaSqFt: site.areaSqFt,
    gatesNotPassed: site.gates.filter(({ status }) => status !== 'pass').length,
  };
  if (!placement) {
    return {
      ...base,
      state: 'left-out',
      buildType: null,
      year: null,
      later: '',
      cost: null,
      busySeasonHours: null,
    };
  }
  const soon = placement.year < yearsLater(campus.calendar.firstYear, SOON_YEARS);
  return {
    ...base,
    state: soon ? 'soon' : 'later',
    buildType: buildType(campus, placement.buildType).name,
    year: fiscalYearLabel(placement.year),
    later: laterInWords(campus, placement),
    cost: costBandOf(ground, placement),
    busySeasonHours: careHoursAt(charges, placement, { age: 2, order: busy.order }),
  };
}

function existingPlaces(ground: Ground, origin: Position): SitePlace[] {
  return ground.campus.existing.map((site) => ({
    site: site.id,
    name: site.name,
    zone: zoneName(ground, site.zone),
    ring: feetRing(origin, site.boundary),
    areaSqFt: site.areaSqFt,
    state: 'there',
    buildType: buildType(ground.campus, site.buildType).name,
    year: String(site.plantedYear),
    later: '',
    cost: null,
    busySeasonHours: null,
    gatesNotPassed: 0,
  }));
}

/** The middle of all boundaries' corners in degrees: a campus is small against the earth. */
function middleOf({ candidates, existing }: Campus): Position {
  const corners = [...candidates, ...existing].flatMap(({ boundary }) => boundary[0] ?? []);
  const mean = (of: (corner: Position) => number) =>
    corners.reduce((sum, corner) => sum + of(corner), 0) / Math.max(1, corners.length);
  return [mean(([longitude]) => longitude), mean(([, latitude]) => latitude)];
}
