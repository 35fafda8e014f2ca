import { anError, aWarning, type Problem } from '#domain/problem.js';
import type { Rings, Site } from '#domain/site.js';
import { wholeInWords } from '#units/in-words.js';
import { areaSqFt } from '../geometry/area.js';
import { overlapSqFt } from '../geometry/overlap.js';
import { isMeasurable } from './boundaries.js';
import { campusPosition, sitesOf, type CampusPlaces } from './places.js';

/** Shared ground up to this part of the smaller site is the width of a drawn line. */
const LINE_SHARE = 0.002;

/** Shared ground above this part of the smaller site would be built twice. */
const TWICE_SHARE = 0.02;

/** Sites that share ground, and sites that lie outside their zone. */
export function overlapProblems(places: CampusPlaces): Problem[] {
  const near = campusPosition(places);
  const sites = sitesOf(places).filter(({ boundary }) => isMeasurable(boundary, near));
  const pairs = sites.flatMap((site, i) =>
    sites.slice(i + 1).flatMap((other) => pairProblems(places, site, other)),
  );
  const zones = new Map(places.zones.map(({ id, boundary }) => [id, boundary]));
  return [
    ...pairs,
    ...sites.flatMap((site) => {
      const zone = zones.get(site.zone);
      return zone && isMeasurable(zone, near) ? zoneProblems(site, zone) : [];
    }),
  ];
}

function pairProblems(places: CampusPlaces, site: Site, other: Site): Problem[] {
  if (!boxesMeet(site.boundary, other.boundary) || areExclusive(places, site, other)) return [];
  const shared = overlapSqFt([site.boundary], [other.boundary]);
  const share = shared / Math.min(areaSqFt(site.boundary), areaSqFt(other.boundary));
  if (share <= LINE_SHARE) return [];
  const place = {
    code: 'SITES-OVERLAP',
    record: `site ${other.id}`,
    field: 'boundary',
    value: site.id,
  };
  const report = share > TWICE_SHARE ? anError : aWarning;
  return [
    report(place, [
      `It shares ${wholeInWords(shared)} sf of ground with site ${site.id}.`,
      'Draw the boundaries apart, or put both sites into one exclusive group.',
    ]),
  ];
}

/** Only one of them will ever be built, so they may lie on the same ground. */
function areExclusive({ exclusiveGroups }: CampusPlaces, site: Site, other: Site): boolean {
  return exclusiveGroups.some(({ sites }) => sites.includes(site.id) && sites.includes(other.id));
}

function zoneProblems(site: Site, zone: Rings): Problem[] {
  const inside = overlapSqFt([site.boundary], [zone]) / areaSqFt(site.boundary);
  if (inside >= 0.5) return [];
  const place = { code: 'SITE-OUTSIDE-ZONE', record: `site ${site.id}`, field: 'zone' };
  const percent = Math.round(inside * 100);
  const part = percent === 0 ? 'Hardly any' : `Only ${percent} %`;
  return [
    aWarning({ ...place, value: site.zone }, [
      `${inside === 0 ? 'None' : part} of it lies within its zone, ${site.zone}.`,
      'Name the zone that it lies in, or correct a boundary.',
    ]),
  ];
}

function boxesMeet(one: Rings, other: Rings): boolean {
  const a = boxOf(one);
  const b = boxOf(other);
  return a.west <= b.east && b.west <= a.east && a.south <= b.north && b.south <= a.north;
}

function boxOf(rings: Rings) {
  const xs = (rings[0] ?? []).map(([x]) => x);
  const ys = (rings[0] ?? []).map(([, y]) => y);
  return {
    west: Math.min(...xs),
    east: Math.max(...xs),
    south: Math.min(...ys),
    north: Math.max(...ys),
  };
}
