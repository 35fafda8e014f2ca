import type { Position, Rings } from '#domain/site.js';
import { areaSqFt } from './area.js';
import { positionAt } from './distance.js';
import { overlapSqFt } from './overlap.js';

export interface Tree {
  readonly position: Position;
  /** Trunk diameter at breast height (4.5 ft), inches. */
  readonly trunkInches: number;
  /** Feet of protected radius per inch of trunk. Published rules run from 1.0 to 1.5. */
  readonly feetPerInch: number;
}

/** radius = k x trunk diameter. Tree ordinances and extension: k from 1.0 to 1.5 ft per inch. */
export function rootProtectionRadiusFt({
  trunkInches,
  feetPerInch,
}: Omit<Tree, 'position'>): number {
  return trunkInches * feetPerInch;
}

const SIDES = 64;

/** Makes the regular polygon's area equal to that of the circle it stands for. */
const EQUAL_AREA = Math.sqrt((2 * Math.PI) / (SIDES * Math.sin((2 * Math.PI) / SIDES)));

/** The protected circle of a tree as a 64-sided polygon of the circle's own area. */
export function rootProtectionCircle(tree: Tree): Rings {
  const radius = rootProtectionRadiusFt(tree) * EQUAL_AREA;
  const ring = Array.from({ length: SIDES }, (_, side) =>
    positionAt(tree.position, -(side * 360) / SIDES, radius),
  );
  return [[...ring, ...ring.slice(0, 1)]];
}

export interface RootProtection {
  readonly protectedSqFt: number;
  /** Part of the site inside root protection, 0 to 1. */
  readonly share: number;
}

/** What part of a site lies in the union of the protected circles. */
export function rootProtectionOfSite(site: Rings, trees: readonly Tree[]): RootProtection {
  const protectedSqFt = overlapSqFt([site], trees.map(rootProtectionCircle));
  return { protectedSqFt, share: protectedSqFt / areaSqFt(site) };
}
