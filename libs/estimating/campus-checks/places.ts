import type { Campus } from '#domain/campus.js';
import type { Position, Rings, Site } from '#domain/site.js';

/** What the boundary checks look at. */
export interface CampusPlaces extends Pick<
  Campus,
  'zones' | 'candidates' | 'existing' | 'exclusiveGroups' | 'overrides'
> {
  /** Ids of sites whose stated area was confirmed against the drawn one. */
  readonly confirmedAreas: ReadonlySet<string>;
}

export function sitesOf({ candidates, existing }: CampusPlaces): readonly Site[] {
  return [...candidates, ...existing];
}

/** A boundary without rings is one that could not be read, and that was said already. */
export function isDrawn(boundary: Rings): boolean {
  return boundary.length > 0;
}

/** With fewer sites than this, nobody can say which of them is the stray one. */
const SITES_TO_JUDGE_BY = 3;

/**
 * Where the campus lies: the median of the first corners, longitude and latitude apart, so that one
 * misplaced site does not move it. Undefined with too few sites.
 */
export function campusPosition(places: CampusPlaces): Position | undefined {
  const corners = sitesOf(places).flatMap(({ boundary }) => boundary[0]?.slice(0, 1) ?? []);
  if (corners.length < SITES_TO_JUDGE_BY) return undefined;
  return [median(corners.map(([x]) => x)), median(corners.map(([, y]) => y))];
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? NaN;
}
