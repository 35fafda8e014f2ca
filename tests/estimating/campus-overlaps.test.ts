/** Shared ground, zones and trees, on rectangles of whole feet so that shares are known. */
import { describe, expect, test } from 'vitest';
import type { Rings } from '#domain/site.js';
import type { SiteTree } from '#domain/survey.js';
import { overlapProblems } from '#estimating/campus-checks/overlaps.js';
import type { CampusPlaces } from '#estimating/campus-checks/places.js';
import { measuredRootShare, treeProblems } from '#estimating/campus-checks/trees.js';
import { placeAt, places, rectangle, site, told } from '../support/drawn-places.js';
import { NO_FACTS } from '../support/tiny/tiny-campus.js';

const A = site('A', rectangle(100, 100));

describe('sites that share ground', () => {
  const beside = (east: number, change: Partial<CampusPlaces> = {}, north = 0) =>
    overlapProblems(places([A, site('D', rectangle(100, 100, [east, north]))], change));

  test('up to 0.2 % of the smaller one is a line, up to 2 % a warning, above it an error', () => {
    expect(beside(99.9)).toEqual([]);
    expect(told(beside(99.7))).toEqual(['warning SITES-OVERLAP site D']);
    expect(told(beside(98.1))).toEqual(['warning SITES-OVERLAP site D']);
    expect(told(beside(97.9))).toEqual(['error SITES-OVERLAP site D']);
    expect(beside(50)[0]?.problem).toContain('5,000 sf');
    expect(beside(50)[0]?.value).toBe('A');
  });

  test('is counted against the smaller of the two, whichever comes first', () => {
    // 5 ft by 20 ft of it lie on A: 1 % of A, but a tenth of its own 1,000 sf.
    const small = site('S', rectangle(50, 20, [95, 0]));
    expect(told(overlapProblems(places([A, small])))).toEqual(['error SITES-OVERLAP site S']);
    expect(told(overlapProblems(places([small, A])))).toEqual(['error SITES-OVERLAP site A']);
  });

  test('is fine within one exclusive group that holds both', () => {
    const group = (...sites: string[]) => ({
      exclusiveGroups: [{ id: 'g', sites, reason: 'one or the other' }],
    });
    expect(beside(50, group('A', 'D'))).toEqual([]);
    expect(beside(50, group('A', 'B'))).toHaveLength(1);
    expect(beside(50, group('B', 'D'))).toHaveLength(1);
  });

  test('is found on every side', () => {
    for (const [east, north] of [
      [-50, 0],
      [0, 50],
      [0, -50],
      [50, 50],
    ] as const) {
      expect(told(beside(east, {}, north))).toEqual(['error SITES-OVERLAP site D']);
    }
    expect(beside(-150)).toEqual([]);
    expect(beside(0, {}, 150)).toEqual([]);
    expect(beside(0, {}, -150)).toEqual([]);
  });

  test('each pair is told once', () => {
    const three = [A, site('D', A.boundary), site('E', A.boundary)];
    expect(told(overlapProblems(places(three)))).toHaveLength(3);
  });

  test('a boundary that cannot be measured is left out', () => {
    const open = site('O', [A.boundary[0]!.slice(0, -1)]);
    expect(overlapProblems(places([A, open]))).toEqual([]);
  });
});

describe('sites outside their zone', () => {
  const zoned = (westPart: number, boundary: Rings = rectangle(westPart, 100)) =>
    overlapProblems(
      places([site('A', A.boundary, { zone: 'z' })], {
        zones: [{ id: 'z', name: 'Z', boundary }],
      }),
    );

  test('are told from less than half inside on', () => {
    expect(zoned(51)).toEqual([]);
    expect(told(zoned(49))).toEqual(['warning SITE-OUTSIDE-ZONE site A']);
    expect(zoned(30)[0]?.problem).toContain('Only 30 %');
    expect(zoned(30)[0]).toMatchObject({ field: 'zone', value: 'z' });
  });

  test('need a zone that is drawn and can be measured', () => {
    expect(zoned(0, [])).toEqual([]);
    expect(zoned(0, [rectangle(30, 100)[0]!.slice(0, -1)])).toEqual([]);
    const elsewhere = site('A', A.boundary, { zone: 'unheard-of' });
    expect(overlapProblems(places([elsewhere]))).toEqual([]);
  });
});

describe('trees', () => {
  const tree = (change: Partial<SiteTree> = {}): SiteTree => ({
    name: 'oak',
    position: placeAt(50, 50),
    trunkInches: 20,
    ...change,
  });
  const withTrees = (trees: SiteTree[], share?: number) =>
    site('A', A.boundary, {
      trees,
      facts: {
        ...NO_FACTS,
        ...(share === undefined ? {} : { rootProtectedShare: { known: true, value: share } }),
      },
    });
  const problems = (trees: SiteTree[], share?: number) =>
    treeProblems(places([withTrees(trees, share)]));

  test('protect a circle of their trunk, as a share of the site to a hundredth of a percent', () => {
    // The radius is 1 ft per inch unless the campus measured another: 20 ft, pi 400 of 10,000 sf.
    const share = measuredRootShare({}, withTrees([tree()]));
    expect(share).toBeCloseTo((Math.PI * 20 ** 2) / 10_000, 4);
    expect((share! * 10_000) % 1).toBeCloseTo(0, 9);
    expect(measuredRootShare({}, withTrees([]))).toBe(0);
    expect(measuredRootShare({}, A)).toBeUndefined();
  });

  test('with a trunk that is impossible are refused, with an unusual one told', () => {
    expect(told(problems([tree({ trunkInches: 400 })]))).toEqual([
      'error TREE-TRUNK-IMPOSSIBLE site A',
    ]);
    const [unusual] = problems([tree({ trunkInches: 70 })]);
    expect(unusual).toMatchObject({
      severity: 'warning',
      code: 'TREE-TRUNK-UNUSUAL',
      field: 'trees[oak].trunkInches',
      value: 70,
    });
  });

  test('more than 1,000 ft from every corner of their site are misplaced', () => {
    expect(problems([tree({ position: placeAt(1_099, 0) })])).toEqual([]);
    expect(problems([tree({ position: placeAt(0, -999) })])).toEqual([]);
    const [far] = problems([tree({ position: placeAt(1_101, 0) })]);
    expect(far).toMatchObject({
      severity: 'error',
      code: 'TREE-NOT-AT-SITE',
      field: 'trees[oak].position',
    });
  });

  test('contradict a stated share that is more than 5 points off', () => {
    // 12.57 % is measured.
    expect(problems([tree()])).toEqual([]);
    expect(problems([tree()], 0.175)).toEqual([]);
    expect(problems([tree()], 0.076)).toEqual([]);
    const [high] = problems([tree()], 0.18);
    expect(high).toMatchObject({
      severity: 'warning',
      code: 'SITE-ROOT-SHARE-MISMATCH',
      field: 'facts.rootProtectedShare',
      value: 0.18,
    });
    expect(high?.problem).toContain('is 18 %, but the trees give 13 %');
    expect(problems([tree()], 0.07)).toHaveLength(1);
  });

  test('do not contradict anything while one of them is misplaced', () => {
    expect(told(problems([tree({ position: placeAt(5_000, 0) })], 0.9))).toEqual([
      'error TREE-NOT-AT-SITE site A',
    ]);
    expect(told(problems([tree({ trunkInches: 70 })], 0))).toEqual([
      'warning TREE-TRUNK-UNUSUAL site A',
      'warning SITE-ROOT-SHARE-MISMATCH site A',
    ]);
  });

  test('of a site that cannot be measured are not judged', () => {
    const open = {
      ...withTrees([tree({ trunkInches: 400 })]),
      boundary: [[...A.boundary[0]!].slice(0, -1)],
    };
    expect(treeProblems(places([open]))).toEqual([]);
  });
});
