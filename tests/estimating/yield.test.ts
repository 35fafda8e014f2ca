import { describe, expect, test } from 'vitest';
import type { Position } from '#domain/site.js';
import { distanceFt, positionAt } from '#estimating/geometry/distance.js';
import { bearingByAge, bearingShare } from '#estimating/yield/bearing.js';
import { CROP_GROUPS } from '#estimating/yield/bearing.data.js';
import { gini, sitesPer1000 } from '#estimating/yield/equity.js';
import { connectedPatches, habitatCounts } from '#estimating/yield/habitat.js';
import { harvestPounds, mealsOf } from '#estimating/yield/harvest-pounds.js';
import { poundsWhileOpen } from '#estimating/yield/kitchens-open.js';
import { contactHours } from '#estimating/yield/teaching.js';
import { runOutsideChecks } from './outside/outside-check.js';
import { yieldChecks } from './outside/yield.checks.js';

runOutsideChecks(yieldChecks);

describe('bearing', () => {
  test('nothing, then a straight rise, then all of it', () => {
    expect(bearingByAge({ bearsAt: 3, fullAt: 5 })).toEqual([0, 0, 1 / 3, 2 / 3, 1]);
    expect(bearingByAge({ bearsAt: 1, fullAt: 1 })).toEqual([1]);
    expect(bearingShare({ age: 40, bearsAt: 3, fullAt: 5 })).toBe(1);
    expect(bearingShare({ age: 0, bearsAt: 3, fullAt: 5 })).toBe(0);
  });

  /** Age of the first crop (planting year is 1), of the full one, pounds per plant, square feet per plant. */
  const TRANSCRIBED = {
    blackberry: [2, 4, 5, 10, 50],
    blueberry: [4, 8, 4, 6, 30],
    raspberry: [2, 4, 3, 5, 24],
    strawberry: [2, 2, 1, 2, 3],
    currant: [2, 4, 4, 5, 16],
    'dwarf apple': [3, 11, 42, 42, 100],
    'dwarf pear': [4, 7, 21, 42, 100],
    hazelnut: [4, 11, 8, 12, 200],
  };

  test('crop groups carry the extension figures and name them', () => {
    const rows = Object.entries(CROP_GROUPS).map(([crop, group]) => [
      crop,
      [group.bearsAt, group.fullAt, ...group.poundsPerPlant, group.sqFtPerPlant],
    ]);
    expect(Object.fromEntries(rows)).toEqual(TRANSCRIBED);
    for (const { source } of Object.values(CROP_GROUPS)) {
      expect(source).toMatch(/Extension|ATTRA|University/);
    }
    expect(CROP_GROUPS.blueberry.source).toContain('426-840');
    expect(CROP_GROUPS['dwarf apple'].source).toContain('1911');
    expect(CROP_GROUPS.currant.source).toContain('1911');
  });
});

describe('food', () => {
  test('bed, yield, bearing and losses', () => {
    expect(
      harvestPounds({ bedSqFt: 1_000, poundsPerSqFt: 0.5, bearing: 0.4, losses: 0.1 }),
    ).toBeCloseTo(180, 9);
    expect(mealsOf(180, 0.25)).toBe(720);
  });

  test('what ripens while kitchens are closed is kept apart', () => {
    const harvest = [
      { date: '2029-07-15', pounds: 40 },
      { date: '2029-08-24', pounds: 30 },
      { date: '2029-09-10', pounds: 50 },
      { date: '2029-12-14', pounds: 5 },
      { date: '2029-12-15', pounds: 7 },
    ];
    const open = [{ starts: '2029-08-24', ends: '2029-12-14' }];
    expect(poundsWhileOpen(harvest, open)).toEqual({ whileOpen: 85, whileClosed: 47 });
    expect(poundsWhileOpen(harvest, [])).toEqual({ whileOpen: 0, whileClosed: 132 });
  });
});

describe('teaching', () => {
  test('contact hours', () =>
    expect(contactHours({ sessions: 12, attendance: 20, hoursEach: 1.5 })).toBe(360));
});

describe('habitat', () => {
  const species = [
    { name: 'aster', native: true, blooms: [8, 9, 10] },
    { name: 'bee balm', native: true, blooms: [6, 7, 8] },
    { name: 'golden alexanders', native: true, blooms: [4, 5, 6] },
    { name: 'lavender', native: false, blooms: [6, 7, 8] },
    { name: 'witch hazel', native: true, blooms: [10, 11, 12] },
  ];

  test('counts species, natives and months with at least three in bloom', () => {
    expect(habitatCounts(species)).toEqual({ species: 5, nativeShare: 0.8, monthsInBloom: 2 });
    expect(habitatCounts([])).toEqual({ species: 0, nativeShare: 0, monthsInBloom: 0 });
  });

  test('winter and early spring bloom does not count as a month', () => {
    const winter = Array.from({ length: 3 }, () => ({
      name: 'x',
      native: true,
      blooms: [3, 4, 10, 11],
    }));
    expect(habitatCounts(winter).monthsInBloom).toBe(2);
  });

  test('patches are connected through one another', () => {
    const origin: Position = [-38, 47.7];
    const centers = [0, 480, 960, 2_000, 1_440].map((east) => positionAt(origin, 90, east));
    expect(connectedPatches(centers, 500)).toEqual([[0, 1, 2, 4], [3]]);
    expect(connectedPatches(centers, 470)).toEqual([[0], [1], [2], [3], [4]]);
    const apart = distanceFt(centers[0]!, centers[1]!);
    expect(connectedPatches(centers.slice(0, 2), apart)).toEqual([[0, 1]]);
    const mixed = [960, 0, 480].map((east) => positionAt(origin, 90, east));
    expect(connectedPatches(mixed, 500)).toEqual([[0, 1, 2]]);
    expect(connectedPatches([], 500)).toEqual([]);
  });
});

describe('equity', () => {
  const zones = [
    { zone: 'quad', sites: 6, residents: 400 },
    { zone: 'east', sites: 3, residents: 1_200 },
    { zone: 'works', sites: 2, residents: 0 },
  ];

  test('a zone where nobody lives has no rate', () => {
    expect(sitesPer1000(zones)).toEqual([
      { zone: 'quad', per1000: 15 },
      { zone: 'east', per1000: 2.5 },
      { zone: 'works', per1000: null },
    ]);
  });

  test('a single resident is somebody', () => {
    const [hermit, crowd] = [
      { zone: 'lodge', sites: 1, residents: 1 },
      { zone: 'halls', sites: 0, residents: 1 },
    ];
    expect(sitesPer1000([hermit])).toEqual([{ zone: 'lodge', per1000: 1000 }]);
    expect(gini([hermit, crowd])).toBe(0.5);
  });

  test('Gini is 0 for equal shares and for no sites', () => {
    expect(
      gini([
        { zone: 'a', sites: 2, residents: 100 },
        { zone: 'b', sites: 4, residents: 200 },
      ]),
    ).toBeCloseTo(0, 12);
    expect(gini([{ zone: 'a', sites: 0, residents: 100 }])).toBe(0);
    expect(gini([])).toBe(0);
  });

  test('Gini by hand: a quarter of residents with two thirds of the sites', () => {
    expect(gini(zones)).toBeCloseTo(2 / 3 - 1 / 4, 9);
  });
});
