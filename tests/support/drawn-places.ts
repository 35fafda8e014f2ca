import type { CampusPlaces } from '#estimating/campus-checks/places.js';
import { positionAt } from '#estimating/geometry/distance.js';
import type { Problem } from '#domain/problem.js';
import type { Position, Rings, Site } from '#domain/site.js';
import { tinySite } from './tiny/tiny-campus.js';

/** In the open ocean: no real ground is meant. */
export const ORIGIN: Position = [-38, 47.7];

/** The place some feet east and north of the origin. */
export function placeAt(eastFt: number, northFt: number): Position {
  return positionAt(positionAt(ORIGIN, 90, eastFt), 0, northFt);
}

/** A closed counter-clockwise rectangle, its south-west corner some feet east and north of the origin. */
export function rectangle(eastFt: number, northFt: number, [east, north] = [0, 0]): Rings {
  const corners = [
    placeAt(east, north),
    placeAt(east + eastFt, north),
    placeAt(east + eastFt, north + northFt),
    placeAt(east, north + northFt),
  ];
  return [[...corners, corners[0]!]];
}

/** A candidate, 10,000 sf by its file. */
export function site(id: string, boundary: Rings, change: Partial<Site> = {}): Site {
  return { ...tinySite(id), boundary, areaSqFt: 10_000, ...change } as Site;
}

/** What the checks look at: nothing but these sites, unless changed. */
export function places(sites: readonly Site[], change: Partial<CampusPlaces> = {}): CampusPlaces {
  return {
    zones: [],
    candidates: sites.filter((s) => s.stage === 'candidate'),
    existing: sites.filter((s) => s.stage === 'existing'),
    exclusiveGroups: [],
    confirmedAreas: new Set(),
    ...change,
  };
}

/** Problems by severity, code and record. */
export const told = (problems: readonly Problem[]) =>
  problems.map(({ code, record, severity }) => `${severity} ${code} ${record}`);
