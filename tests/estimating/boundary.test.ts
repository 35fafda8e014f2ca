import { describe, expect, test } from 'vitest';
import type { Position, Rings } from '#domain/site.js';
import { ringMeasures } from '#estimating/geometry/area.js';
import { repairBoundary } from '#estimating/geometry/repair.js';
import { boundaryFindings } from '#estimating/geometry/ring-findings.js';
import { statedAreaFindings } from '#estimating/geometry/stated-area.js';
import { ORIGIN, rectangle } from '../support/drawn-places.js';
import { OCEAN_SITE } from './outside/geometry.checks.js';

describe('what is wrong with a boundary', () => {
  const problems = (rings: Rings, near?: Position): string[] =>
    boundaryFindings(rings, near).map((f) => `${f.severity}: ${f.field} ${f.problem}`);

  test('nothing, for a proper one', () => {
    expect(problems([OCEAN_SITE])).toEqual([]);
    expect(problems([OCEAN_SITE], ORIGIN)).toEqual([]);
  });

  test('no ring at all', () => expect(problems([])).toEqual(['reject: boundary has no ring']));

  test('not closed: repaired and said', () => {
    expect(problems([OCEAN_SITE.slice(0, -1)])).toEqual(['warn: boundary is not closed']);
    expect(repairBoundary([OCEAN_SITE.slice(0, -1)])).toEqual([OCEAN_SITE]);
  });

  test('wound the wrong way: repaired and said', () => {
    expect(problems([[...OCEAN_SITE].reverse()])).toEqual(['warn: boundary winds clockwise']);
    const repaired = repairBoundary([[...OCEAN_SITE].reverse()]);
    expect(ringMeasures(repaired[0]!).squareMeters).toBeGreaterThan(0);
  });

  test('a hole must wind clockwise', () => {
    const outer = rectangle(200, 200)[0]!;
    const hole = rectangle(50, 50, [20, 20])[0]!;
    expect(problems([outer, hole])).toEqual(['warn: boundary hole 1 winds counter-clockwise']);
    expect(problems([outer, [...hole].reverse()])).toEqual([]);
    expect(problems(repairBoundary([outer, hole]))).toEqual([]);
  });

  test('repeated positions are dropped', () => {
    const twice = OCEAN_SITE.flatMap((p) => [p, p]);
    expect(repairBoundary([twice])).toEqual([OCEAN_SITE]);
  });

  test('crossing itself', () => {
    const bow: Position[] = [
      [0, 0],
      [0.002, 0.002],
      [0.002, 0],
      [0, 0.002],
      [0, 0],
    ];
    expect(problems([bow])).toEqual(['reject: boundary crosses itself: edge 1 meets edge 3']);
  });

  test('two corners', () => {
    const line: Position[] = [
      [0, 0],
      [0.001, 0.001],
      [0, 0],
    ];
    expect(problems([line])).toEqual(['reject: boundary has 2 distinct positions']);
  });

  test('latitude before longitude, told by the range or by where the campus is', () => {
    const swap = OCEAN_SITE.map(([x, y]): Position => [y, x]);
    expect(problems([swap])).toEqual(['warn: boundary winds clockwise']);
    expect(problems([swap], ORIGIN)).toEqual([
      'reject: boundary seems to give latitude before longitude',
    ]);
    const western = OCEAN_SITE.map(([x, y]): Position => [y, x - 80]);
    expect(problems([western])).toEqual([
      'reject: boundary seems to give latitude before longitude',
    ]);
  });

  test('a place far from campus is not called swapped', () => {
    const far = OCEAN_SITE.map(([x, y]): Position => [x + 20, y]);
    expect(problems([far], ORIGIN)).toEqual([]);
    const close = OCEAN_SITE.map(([x, y]): Position => [x + 1, y]);
    expect(problems([close], ORIGIN)).toEqual([]);
  });

  test('projected coordinates', () => {
    const meters: Position[] = [
      [500_000, 5_282_000],
      [500_080, 5_282_000],
      [500_080, 5_282_060],
      [500_000, 5_282_000],
    ];
    expect(problems([meters])).toEqual([
      'reject: boundary is not in degrees; it looks like projected coordinates',
    ]);
  });

  test('not a number', () => {
    expect(
      problems([
        [
          [Number.NaN, 1],
          [0, 1],
          [1, 1],
          [0, 0],
        ],
      ]),
    ).toEqual(['reject: boundary has a position that is not a number']);
    expect(
      problems([
        [
          [0, 1],
          [0, Infinity],
          [1, 1],
          [0, 0],
        ],
      ])[0],
    ).toContain('not a number');
  });

  /** A triangle a tenth of a degree wide with its first corner at a position. */
  const triangleAt = (x: number, y: number): Rings => [
    [
      [x, y],
      [x + 0.1, y],
      [x, y + 0.1],
      [x, y],
    ],
  ];

  test('the ends of the degrees belong to them', () => {
    const triangle: Rings = [
      [
        [179, 89],
        [180, 89],
        [180, 90],
        [179, 89],
      ],
    ];
    expect(problems(triangle)).toEqual([]);
    const projected = /projected coordinates/;
    const swapped = /latitude before longitude/;
    expect(problems(triangleAt(180.5, 10))[0]).toMatch(projected);
    expect(problems(triangleAt(100, 90.5))[0]).toMatch(projected);
    expect(problems(triangleAt(90.5, 90.5))[0]).toMatch(projected);
    expect(problems(triangleAt(10, 180.5))[0]).toMatch(projected);
    expect(problems(triangleAt(10, 179.5))[0]).toMatch(swapped);
    expect(problems(triangleAt(89.5, 95))[0]).toMatch(swapped);
    expect(problems(triangleAt(60, 90))[0]).toMatch(swapped);
    expect(problems(triangleAt(89.95, 95))[0]).toMatch(projected);
    expect(problems(triangleAt(89.9, 179.9))[0]).toMatch(swapped);
    expect(problems(triangleAt(-179.5, 10))).toEqual([]);
    expect(problems(triangleAt(10, -89.5))).toEqual([]);
  });

  test('swapping is suspected only where it would bring the place within five degrees of campus', () => {
    expect(problems(triangleAt(15.5, 12), [10, 12])[0]).toMatch(/latitude before longitude/);
    expect(problems(triangleAt(14.5, 12), [10, 12])).toEqual([]);
    expect(problems(triangleAt(30, 15.5), [10, 30])).toEqual([]);
    expect(problems(triangleAt(30, 14.5), [10, 30])[0]).toMatch(/latitude before longitude/);
    expect(problems(triangleAt(35.5, 10), [10, 30])).toEqual([]);
    expect(problems(triangleAt(34.5, 10), [10, 30])[0]).toMatch(/latitude before longitude/);
  });

  test('a sliver', () => {
    expect(problems(rectangle(400, 1.5))).toEqual([
      'warn: boundary is a sliver: about 1.5 ft wide on average',
    ]);
    expect(problems(rectangle(400, 3.1))).toEqual([]);
    expect(problems(rectangle(400, 0.11))[0]).toMatch(/^warn/);
    expect(problems(rectangle(400, 0.05))[0]).toMatch(/^reject: boundary is a sliver/);
  });

  test('every finding says what to do', () => {
    const all = [
      ...boundaryFindings([]),
      ...boundaryFindings([OCEAN_SITE.slice(0, -1)]),
      ...boundaryFindings([[...OCEAN_SITE].reverse()]),
      ...boundaryFindings([OCEAN_SITE.map(([x, y]): Position => [y, x])], ORIGIN),
      ...boundaryFindings(rectangle(400, 0.05)),
    ];
    expect(all.length).toBe(5);
    for (const finding of all) expect(finding.remedy.length).toBeGreaterThan(10);
  });
});

describe('stated against drawn area', () => {
  test('a slipped digit is named with both areas', () => {
    const [finding] = statedAreaFindings({ site: 'TVU-14', drawnSqFt: 17_480, statedSqFt: 1_750 });
    expect(finding).toEqual({
      field: 'areaSqFt',
      value: 1_750,
      severity: 'warn',
      problem: 'TVU-14: the drawn boundary is 17,480 sf but the stated area is 1,750 sf',
      remedy: 'Planning uses the drawn area until you confirm.',
    });
  });

  test('five percent either way is let pass', () => {
    const at = (statedSqFt: number): number =>
      statedAreaFindings({ site: 'TVU-01', drawnSqFt: 10_000, statedSqFt }).length;
    expect([9_499, 9_500, 10_500, 10_501].map(at)).toEqual([1, 0, 0, 1]);
  });
});
