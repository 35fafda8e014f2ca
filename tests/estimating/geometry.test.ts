import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Rings } from '#domain/site.js';
import { areaSqFt, isClosed, perimeterFt, ringMeasures } from '#estimating/geometry/area.js';
import { centroid } from '#estimating/geometry/centroid.js';
import { distanceFt, inverse, positionAt } from '#estimating/geometry/distance.js';
import { overlapSqFt, remainderSqFt, unionSqFt } from '#estimating/geometry/overlap.js';
import {
  rootProtectionCircle,
  rootProtectionOfSite,
} from '#estimating/geometry/root-protection.js';
import { ORIGIN, rectangle } from '../support/drawn-places.js';
import { geometryChecks, OCEAN_SITE } from './outside/geometry.checks.js';
import { runOutsideChecks } from './outside/outside-check.js';

runOutsideChecks(geometryChecks);

const feet = fc.integer({ min: 20, max: 600 });

describe('area and perimeter', () => {
  test('a hole is taken out of the area and its edge added to the perimeter', () => {
    const outer = rectangle(200, 100)[0]!;
    const hole = rectangle(50, 40, [20, 20])[0]!;
    expect(areaSqFt([outer, hole])).toBeCloseTo(areaSqFt([outer]) - areaSqFt([hole]), 6);
    expect(areaSqFt([outer, hole])).toBeCloseTo(18_000, 0);
    expect(perimeterFt([outer, hole])).toBeCloseTo(600 + 180, 1);
  });

  test('does not depend on which way a ring winds or whether it is closed', () => {
    const ring = rectangle(120, 80)[0]!;
    expect(areaSqFt([[...ring].reverse()])).toBeCloseTo(areaSqFt([ring]), 6);
    expect(areaSqFt([ring.slice(0, -1)])).toBeCloseTo(areaSqFt([ring]), 6);
    expect(ringMeasures([...ring].reverse()).squareMeters).toBeLessThan(0);
  });

  test('no ring has no area', () => expect(areaSqFt([])).toBe(0));

  test('cutting a rectangle in two conserves its area', () => {
    fc.assert(
      fc.property(feet, feet, feet, (west, east, north) => {
        const whole = areaSqFt(rectangle(west + east, north));
        const parts =
          areaSqFt(rectangle(west, north)) + areaSqFt(rectangle(east, north, [west, 0]));
        expect(Math.abs(parts - whole)).toBeLessThan(whole * 1e-5 + 0.01);
      }),
      { numRuns: 40 },
    );
  });

  test('grows with each side', () => {
    fc.assert(
      fc.property(feet, feet, (east, north) => {
        expect(areaSqFt(rectangle(east + 1, north))).toBeGreaterThan(
          areaSqFt(rectangle(east, north)),
        );
      }),
      { numRuns: 40 },
    );
  });

  test('a closed ring repeats its first position', () => {
    expect(isClosed(OCEAN_SITE)).toBe(true);
    expect(isClosed(OCEAN_SITE.slice(0, -1))).toBe(false);
    expect(
      isClosed([
        [1, 2],
        [1, 3],
      ]),
    ).toBe(false);
    expect(
      isClosed([
        [1, 2],
        [3, 2],
      ]),
    ).toBe(false);
    expect(isClosed([[1, 2]])).toBe(false);
    expect(
      isClosed([
        [1, 2],
        [1, 2],
      ]),
    ).toBe(true);
    expect(isClosed([])).toBe(false);
  });
});

describe('distance and position', () => {
  test('going out and measuring back gives the distance and azimuth', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 9_000 }),
        fc.integer({ min: -179, max: 179 }),
        (far, azimuth) => {
          const there = positionAt(ORIGIN, azimuth, far);
          expect(distanceFt(ORIGIN, there)).toBeCloseTo(far, 4);
          expect(inverse(ORIGIN, there).azimuth).toBeCloseTo(azimuth, 4);
        },
      ),
    );
  });

  test('a place is no distance from itself', () => expect(distanceFt(ORIGIN, ORIGIN)).toBe(0));
});

describe('centroid', () => {
  test('of a rectangle lies at its middle', () => {
    const [x, y] = centroid(rectangle(400, 100));
    const [middleX, middleY] = positionAt(positionAt(ORIGIN, 90, 200), 0, 50);
    expect(x).toBeCloseTo(middleX, 7);
    expect(y).toBeCloseTo(middleY, 7);
  });

  test('moves away from a hole', () => {
    const outer = rectangle(400, 100)[0]!;
    const hole = rectangle(100, 100 - 20, [290, 10])[0]!;
    const [x] = centroid([outer, hole]);
    const expected = (40_000 * 200 - 8_000 * 340) / 32_000;
    expect(distanceFt([x, ORIGIN[1]], ORIGIN)).toBeCloseTo(expected, 1);
    const turned = centroid([[...outer].reverse(), hole]);
    expect(turned[0]).toBeCloseTo(x, 9);
  });

  test('does not exist without area or positions', () => {
    expect(() => centroid([])).toThrow(/without positions/);
    expect(() => centroid([[ORIGIN, positionAt(ORIGIN, 0, 9), ORIGIN]])).toThrow(/zero area/);
  });
});

describe('overlap', () => {
  test('of rectangles is the rectangle they share', () => {
    const one = rectangle(200, 100);
    const other = rectangle(200, 100, [150, 20]);
    expect(overlapSqFt([one], [other])).toBeCloseTo(50 * 80, 0);
    expect(unionSqFt([one, other])).toBeCloseTo(40_000 - 4_000, 0);
    expect(remainderSqFt([one], [other])).toBeCloseTo(20_000 - 4_000, 0);
  });

  test('is nothing for sites apart or without sites', () => {
    const one = rectangle(50, 50);
    expect(overlapSqFt([one], [rectangle(50, 50, [100, 0])])).toBe(0);
    expect(overlapSqFt([one], [])).toBe(0);
    expect(overlapSqFt([], [one])).toBe(0);
    expect(unionSqFt([])).toBe(0);
  });

  test('is the same both ways and never above either area', () => {
    fc.assert(
      fc.property(feet, feet, fc.integer({ min: -300, max: 300 }), (east, north, off) => {
        const one = rectangle(east, north);
        const other = rectangle(north, east, [off, off]);
        const shared = overlapSqFt([one], [other]);
        expect(shared).toBeCloseTo(overlapSqFt([other], [one]), 4);
        expect(shared).toBeLessThanOrEqual(areaSqFt(one) * (1 + 1e-6));
      }),
      { numRuns: 40 },
    );
  });

  test('a shared edge drawn with dust in its coordinates does not break the clipper', () => {
    const one = rectangle(100, 100);
    const dusty: Rings = [one[0]!.map(([x, y]) => [x + 3e-13, y - 2e-13])];
    expect(overlapSqFt([one], [dusty])).toBeCloseTo(areaSqFt(one), 0);
  });
});

describe('root protection', () => {
  test('a circle has the area of the circle and winds counter-clockwise', () => {
    const circle = rootProtectionCircle({ position: ORIGIN, trunkInches: 28, feetPerInch: 1 });
    expect(areaSqFt(circle)).toBeCloseTo(Math.PI * 28 ** 2, 3);
    const edges = circle[0]!.slice(1).map((to, i) => distanceFt(circle[0]![i]!, to));
    expect(Math.max(...edges) - Math.min(...edges)).toBeLessThan(1e-4);
    expect(ringMeasures(circle[0]!).squareMeters).toBeGreaterThan(0);
    expect(isClosed(circle[0]!)).toBe(true);
    expect(circle[0]!.length).toBe(65);
  });

  test('two trees in one place protect no more than one', () => {
    const site = rectangle(100, 100);
    const tree = {
      position: positionAt(positionAt(ORIGIN, 90, 50), 0, 50),
      trunkInches: 20,
      feetPerInch: 1,
    };
    const one = rootProtectionOfSite(site, [tree]);
    expect(one.protectedSqFt).toBeCloseTo(Math.PI * 400, 0);
    expect(one.share).toBeCloseTo((Math.PI * 400) / 10_000, 4);
    expect(rootProtectionOfSite(site, [tree, tree]).protectedSqFt).toBeCloseTo(
      one.protectedSqFt,
      2,
    );
  });

  test('no tree protects nothing; a tree over the edge only what lies on the site', () => {
    const site = rectangle(100, 100);
    expect(rootProtectionOfSite(site, [])).toEqual({ protectedSqFt: 0, share: 0 });
    const corner = { position: ORIGIN, trunkInches: 20, feetPerInch: 1 };
    expect(rootProtectionOfSite(site, [corner]).protectedSqFt).toBeCloseTo((Math.PI * 400) / 4, 0);
  });
});
