import { buildType, candidate } from '#domain/campus.js';
import type { Placement } from '#domain/plan.js';
import { pointsPerYear } from '#estimating/benefit-points/benefit-points.js';
import type { Ground } from '../ground.js';

/**
 * Every candidate that could be prepared in a year, as one build type: the type that the plan gives
 * it, else the one that earns most benefit a year among those open to it then.
 */
export function rivalsIn(ground: Ground, yearIndex: number): Placement[] {
  const { campus, lifecycles, placed, years } = ground;
  const year = years[yearIndex];
  if (year === undefined) return [];
  return campus.candidates.flatMap(({ id }) => {
    const types = lifecycles
      .filter((l) => l.site === id && l.yearIndex === yearIndex)
      .map((l) => l.buildType);
    const planned = placed.get(id)?.buildType;
    if (planned !== undefined && types.includes(planned)) {
      return [{ site: id, buildType: planned, year }];
    }
    const [best] = types.sort((a, b) => points(ground, id, b) - points(ground, id, a));
    return best === undefined ? [] : [{ site: id, buildType: best, year }];
  });
}

/** Points of benefit that a site earns in a year as a build type. */
export function points({ campus }: Ground, site: string, type: string): number {
  return pointsPerYear(campus, candidate(campus, site), buildType(campus, type));
}

/** Place of a value among others, from 1; equals share a place. */
export interface Rank {
  readonly place: number;
  readonly of: number;
}

export function rankOf(value: number, others: readonly number[], better: 'more' | 'less'): Rank {
  const ahead = others.filter((o) => (better === 'more' ? o > value : o < value)).length;
  return { place: ahead + 1, of: others.length + 1 };
}

/** In the better half: a reason for; else one against. */
export function speaksFor({ place, of }: Rank): boolean {
  return place * 2 <= of + 1;
}
