import { anError, aWarning, type Problem } from '#domain/problem.js';
import type { Site } from '#domain/site.js';
import { areaSqFt } from '../geometry/area.js';
import { statedAreaFindings } from '../geometry/stated-area.js';
import { isMeasurable } from './boundaries.js';
import { campusPosition, sitesOf, type CampusPlaces } from './places.js';

/** Stated and drawn areas farther apart than this part of the drawn one cannot both be of one site. */
const CONFIRMABLE = 0.5;

/** Drawn area of each site that can be measured, in square feet, by site id. */
export function drawnAreas(places: CampusPlaces): ReadonlyMap<string, number> {
  const near = campusPosition(places);
  const measurable = sitesOf(places).filter(({ boundary }) => isMeasurable(boundary, near));
  return new Map(measurable.map(({ id, boundary }) => [id, areaSqFt(boundary)]));
}

/** Stated areas that differ from the drawn ones by more than 5 %. */
export function areaProblems(places: CampusPlaces): Problem[] {
  const near = campusPosition(places);
  const measurable = sitesOf(places).filter(({ boundary }) => isMeasurable(boundary, near));
  return measurable.flatMap((site) => {
    const drawnSqFt = areaSqFt(site.boundary);
    if (agrees(site, drawnSqFt)) return [];
    return places.confirmedAreas.has(site.id)
      ? confirmedProblems(site, drawnSqFt)
      : statedProblems(site, drawnSqFt);
  });
}

/**
 * Area that planning uses: the stated one where it is confirmed or within 5 % of the drawn one, else
 * the drawn one, to the square foot.
 */
export function planningAreaSqFt(
  site: Site,
  drawnSqFt: number | undefined,
  confirmed: ReadonlySet<string>,
): number {
  if (drawnSqFt === undefined || confirmed.has(site.id) || agrees(site, drawnSqFt)) {
    return site.areaSqFt;
  }
  return Math.round(drawnSqFt);
}

function agrees({ id, areaSqFt: statedSqFt }: Site, drawnSqFt: number): boolean {
  return statedAreaFindings({ site: id, drawnSqFt, statedSqFt }).length === 0;
}

function statedProblems({ id, areaSqFt: statedSqFt }: Site, drawnSqFt: number): Problem[] {
  return statedAreaFindings({ site: id, drawnSqFt, statedSqFt }).map(({ problem, remedy }) =>
    aWarning(place(id, statedSqFt), [`${problem}.`, remedy]),
  );
}

function confirmedProblems({ id, areaSqFt: stated }: Site, drawn: number): Problem[] {
  if (Math.abs(stated - drawn) <= CONFIRMABLE * drawn) return [];
  return [
    anError(place(id, stated), [
      `The stated area of ${whole(stated)} sf was confirmed, but the boundary holds ${whole(drawn)} sf.`,
      'Draw the boundary again, or correct the stated area: they cannot both be of this site.',
    ]),
  ];
}

function place(id: string, value: number) {
  return { code: 'SITE-AREA-MISMATCH', record: `site ${id}`, field: 'areaSqFt', value };
}

function whole(value: number): string {
  return Math.round(value).toLocaleString('en-US');
}
