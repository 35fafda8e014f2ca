import type { Position } from '#domain/site.js';
import { distanceFt } from '../geometry/distance.js';

/** A species on a site: months (1 to 12) in which it blooms. */
export interface Species {
  readonly name: string;
  readonly native: boolean;
  readonly blooms: readonly number[];
}

export interface HabitatCounts {
  readonly species: number;
  /** Native species over all species; 0 where there are none. */
  readonly nativeShare: number;
  /** Months from April to October with at least three species in bloom, 0 to 7. */
  readonly monthsInBloom: number;
}

const BLOOM_MONTHS = [4, 5, 6, 7, 8, 9, 10] as const;
const LEAST_IN_BLOOM = 3;

/** Counts, side by side; no score is made of them. */
export function habitatCounts(species: readonly Species[]): HabitatCounts {
  const inBloom = (month: number): number =>
    species.filter(({ blooms }) => blooms.includes(month)).length;
  const native = species.filter((each) => each.native).length;
  return {
    species: species.length,
    nativeShare: species.length === 0 ? 0 : native / species.length,
    monthsInBloom: BLOOM_MONTHS.filter((month) => inBloom(month) >= LEAST_IN_BLOOM).length,
  };
}

/** Patches in groups: two are connected where their centers lie within `withinFt`, or through others. */
export function connectedPatches(centers: readonly Position[], withinFt: number): number[][] {
  const groups: number[][] = [];
  const left = new Set(centers.keys());
  while (left.size > 0) {
    const group = [...left].slice(0, 1);
    for (const index of group) {
      left.delete(index);
      for (const other of neighborsOf({ centers, index, left, withinFt })) {
        left.delete(other);
        group.push(other);
      }
    }
    groups.push(group.sort((a, b) => a - b));
  }
  return groups;
}

interface Neighborhood {
  readonly centers: readonly Position[];
  readonly index: number;
  readonly left: ReadonlySet<number>;
  readonly withinFt: number;
}

function neighborsOf({ centers, index, left, withinFt }: Neighborhood): number[] {
  const from = centers[index];
  return [...left].filter((other) => {
    const to = centers[other];
    return from !== undefined && to !== undefined && distanceFt(from, to) <= withinFt;
  });
}
