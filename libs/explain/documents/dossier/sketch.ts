import type { Campus } from '#domain/campus.js';
import type { CandidateSite } from '#domain/site.js';
import { perimeterFt } from '#estimating/geometry/area.js';
import { centroid } from '#estimating/geometry/centroid.js';
import { extentOf, feetRing, type FeetPoint } from '../feet-plane.js';
import type { SiteSketch } from './site-dossier.js';

/** The site in feet about its center, with those neighbors that lie wholly close by. */
export function sketchOf(campus: Campus, site: CandidateSite): SiteSketch {
  const center = centroid(site.boundary);
  const ring = feetRing(center, site.boundary);
  const { width, height } = extentOf(ring);
  const reach = NEAR * Math.max(width, height);
  const near = ({ x, y }: FeetPoint) => Math.abs(x) <= reach && Math.abs(y) <= reach;
  const neighbors = [...campus.candidates, ...campus.existing]
    .filter(({ id }) => id !== site.id)
    .map(({ id, boundary }) => ({ label: id, ring: feetRing(center, boundary) }))
    .filter((neighbor) => neighbor.ring.length > 0 && neighbor.ring.every(near));
  return {
    ring,
    neighbors,
    widthFt: width,
    heightFt: height,
    perimeterFt: perimeterFt(site.boundary),
    center,
  };
}

/** Neighbors within this many times the size of the site are drawn. */
const NEAR = 1.5;
