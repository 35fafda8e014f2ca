/** Drawn places of a campus: rectangles of whole feet on the ellipsoid, so that areas are known. */
import { describe, expect, test } from 'vitest';
import type { Position, Rings } from '#domain/site.js';
import { areaProblems, drawnAreas, planningAreaSqFt } from '#estimating/campus-checks/areas.js';
import { boundaryProblems, isMeasurable } from '#estimating/campus-checks/boundaries.js';
import { checkCampus } from '#estimating/campus-checks/check-campus.js';
import { campusPosition, sitesOf } from '#estimating/campus-checks/places.js';
import { areaSqFt } from '#estimating/geometry/area.js';
import { ORIGIN, placeAt, places, rectangle, site, told } from '../support/drawn-places.js';

const A = site('A', rectangle(100, 100));
const B = site('B', rectangle(100, 100, [200, 0]));
const C = site('C', rectangle(100, 100, [400, 0]));

describe('where a campus lies', () => {
  test('is the median of the first corners, longitude and latitude apart', () => {
    const at = (id: string, corner: Position) => site(id, [[corner]]);
    const three = [at('1', [10, 3]), at('2', [30, 1]), at('3', [20, 200])];
    expect(campusPosition(places(three))).toEqual([20, 3]);
    const five = [...three, at('4', [9, 2]), at('5', [100, 2])];
    expect(campusPosition(places(five))).toEqual([20, 2]);
  });

  test('cannot be said of two sites, nor of sites without a boundary', () => {
    expect(campusPosition(places([A, B]))).toBeUndefined();
    expect(campusPosition(places([A, B, site('0', [])]))).toBeUndefined();
  });

  test('counts candidates and what stands already', () => {
    const standing = site('C', C.boundary, { stage: 'existing' });
    expect(sitesOf(places([A, standing])).map(({ id }) => id)).toEqual(['A', 'C']);
    expect(campusPosition(places([A, B, standing]))).toBeDefined();
  });
});

describe('boundaries', () => {
  test('nothing is wrong with three proper ones', () => {
    expect(checkCampus(places([A, B, C]))).toEqual([]);
    expect(isMeasurable(A.boundary, undefined)).toBe(true);
    expect(isMeasurable([], undefined)).toBe(false);
  });

  test('not closed is refused, wound the wrong way is told', () => {
    const open = [A.boundary[0]!.slice(0, -1)];
    const turned = [[...A.boundary[0]!].reverse()];
    expect(told(boundaryProblems(places([site('A', open)])))).toEqual([
      'error SITE-RING-UNCLOSED site A',
    ]);
    expect(isMeasurable(open, undefined)).toBe(false);
    expect(told(boundaryProblems(places([site('A', turned)])))).toEqual([
      'warning SITE-RING-WINDING site A',
    ]);
    expect(isMeasurable(turned, undefined)).toBe(true);
  });

  test('a hole is named by its place in the polygon of the file', () => {
    const hole = rectangle(20, 20, [10, 10])[0]!;
    const [problem] = boundaryProblems(places([site('A', [...A.boundary, hole])]));
    expect(problem).toMatchObject({
      code: 'SITE-RING-WINDING',
      field: 'boundary.coordinates[#2]',
    });
    const [outer] = boundaryProblems(places([site('A', [[...A.boundary[0]!].reverse()])]));
    expect(outer?.field).toBe('boundary');
  });

  test('of zones are judged too, where they are drawn', () => {
    const open = [A.boundary[0]!.slice(0, -1)];
    const zones = [
      { id: 'z', name: 'Z', boundary: open },
      { id: 'y', name: 'Y' },
    ];
    expect(told(boundaryProblems(places([A], { zones })))).toEqual([
      'error SITE-RING-UNCLOSED zone z',
    ]);
  });

  test('half a degree from the others is far; without others nobody can say', () => {
    const square = (longitude: number, latitude: number): Rings => [
      [
        [longitude, latitude],
        [longitude + 0.001, latitude],
        [longitude + 0.001, latitude + 0.001],
        [longitude, latitude + 0.001],
        [longitude, latitude],
      ],
    ];
    const near = [site('1', square(10, 50)), site('2', square(10, 50)), site('3', square(10, 50))];
    const withOne = (rings: Rings) => told(boundaryProblems(places([...near, site('4', rings)])));
    const far = ['warning SITE-FAR-FROM-CAMPUS site 4'];
    expect(withOne(square(10.49, 50.49))).toEqual([]);
    expect(withOne(square(9.51, 49.51))).toEqual([]);
    expect(withOne(square(10.51, 50))).toEqual(far);
    expect(withOne(square(9.48, 50))).toEqual(far);
    expect(withOne(square(10, 50.51))).toEqual(far);
    expect(withOne(square(10, 49.48))).toEqual(far);
    // One corner over the line is enough.
    expect(withOne(square(10.4995, 50))).toEqual(far);
    expect(told(boundaryProblems(places([near[0]!, site('4', square(20, 50))])))).toEqual([]);
  });

  test('latitude before longitude is only found where the campus is known', () => {
    const swap = (rings: Rings): Rings => rings.map((ring) => ring.map(([x, y]) => [y, x]));
    const swapped = site('D', swap(A.boundary));
    const found = told(boundaryProblems(places([A, B, C, swapped])));
    expect(found).toEqual(['error SITE-COORDINATES-SWAPPED site D']);
    expect(isMeasurable(swapped.boundary, ORIGIN)).toBe(false);
    expect(isMeasurable(swapped.boundary, undefined)).toBe(true);
  });
});

describe('stated areas', () => {
  // 100 ft by 100 ft is 10,000 sf; the curve of the earth changes it by far less than a square foot.
  const stated = (areaSqFt: number, ...confirmed: string[]) =>
    areaProblems(
      places([site('A', A.boundary, { areaSqFt })], { confirmedAreas: new Set(confirmed) }),
    );

  test('up to 5 % off are taken as they are', () => {
    expect(areaSqFt(A.boundary)).toBeCloseTo(10_000, 0);
    expect(stated(10_499)).toEqual([]);
    expect(stated(9_501)).toEqual([]);
  });

  test('farther off are told, and refused where they were confirmed and are half off', () => {
    expect(told(stated(10_501))).toEqual(['warning SITE-AREA-MISMATCH site A']);
    expect(told(stated(9_499))).toEqual(['warning SITE-AREA-MISMATCH site A']);
    expect(stated(14_999, 'A')).toEqual([]);
    expect(stated(5_001, 'A')).toEqual([]);
    const [problem] = stated(15_001, 'A');
    expect(problem).toMatchObject({ severity: 'error', field: 'areaSqFt', value: 15_001 });
    expect(problem?.problem).toContain('15,001 sf');
    expect(problem?.problem).toContain('10,000 sf');
    expect(told(stated(4_999, 'A'))).toEqual(['error SITE-AREA-MISMATCH site A']);
  });

  test('planning uses the stated area where it is confirmed, near or alone, else the drawn one', () => {
    const of = (areaSqFt: number) => site('A', A.boundary, { areaSqFt });
    expect(planningAreaSqFt(of(12_000), 10_000.4, new Set())).toBe(10_000);
    expect(planningAreaSqFt(of(12_000), 10_000.4, new Set(['A']))).toBe(12_000);
    expect(planningAreaSqFt(of(12_000), 10_000.4, new Set(['B']))).toBe(10_000);
    expect(planningAreaSqFt(of(10_400), 10_000.4, new Set())).toBe(10_400);
    expect(planningAreaSqFt(of(12_000), undefined, new Set())).toBe(12_000);
  });

  test('are drawn of sites that can be measured alone', () => {
    const crossed = site('X', [[A.boundary[0]![0]!, A.boundary[0]![2]!, A.boundary[0]![0]!]]);
    const drawn = drawnAreas(places([A, crossed]));
    expect([...drawn.keys()]).toEqual(['A']);
    expect(drawn.get('A')).toBeCloseTo(10_000, 0);
    expect(told(areaProblems(places([{ ...crossed, areaSqFt: 1 }])))).toEqual([]);
  });
});

test('all kinds of problems are told together', () => {
  const overlapping = site('D', rectangle(100, 100, [50, 0]), {
    areaSqFt: 20_000,
    trees: [{ name: 'elm', position: placeAt(50, 50), trunkInches: 400 }],
  });
  const turned = site('E', [[...C.boundary[0]!].reverse()]);
  expect(told(checkCampus(places([A, overlapping, turned])))).toEqual([
    'warning SITE-RING-WINDING site E',
    'warning SITE-AREA-MISMATCH site D',
    'error SITES-OVERLAP site D',
    'error TREE-TRUNK-IMPOSSIBLE site D',
  ]);
});
