import type { Problem } from '#domain/problem.js';
import { areaProblems } from './areas.js';
import { boundaryProblems } from './boundaries.js';
import { overlapProblems } from './overlaps.js';
import type { CampusPlaces } from './places.js';
import { treeProblems } from './trees.js';

/** Everything that is wrong with the drawn places of a campus. */
export function checkCampus(places: CampusPlaces): Problem[] {
  return [
    ...boundaryProblems(places),
    ...areaProblems(places),
    ...overlapProblems(places),
    ...treeProblems(places),
  ];
}
