import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { known, UNKNOWN } from '#units/known.js';
import {
  connectedCurveNumber,
  IMPERVIOUS_CURVE_NUMBER,
  unconnectedCurveNumber,
  weightedCurveNumber,
} from '#estimating/water/composite-curve-number.js';
import { CURVE_NUMBERS } from '#estimating/water/curve-numbers.data.js';
import { irrigationGallons } from '#estimating/water/irrigation.js';
import { capturedGallons, gallonsOf } from '#estimating/water/rain.js';
import {
  cubicFeetOf,
  runoffInches,
  runoffSavedCuFt,
  storageInches,
} from '#estimating/water/runoff.js';
import {
  COVER_OF_COMPONENT,
  coverBefore,
  plantedCurveNumber,
} from '#estimating/water/site-cover.js';
import { soilGroupOf } from '#estimating/water/soil-group.js';
import { demandMet, tankBalance } from '#estimating/water/tank.js';
import { runOutsideChecks } from './outside/outside-check.js';
import { waterChecks } from './outside/water.checks.js';

runOutsideChecks(waterChecks);

/** TR-55 tables 2-2a and 2-2c, groups A to D, transcribed apart from the code. */
const PUBLISHED = `
lawn, good (grass above 75 %) 39 61 74 80
lawn, fair (50 to 75 %) 49 69 79 84
lawn, poor (below 50 %) 68 79 86 89
paved, roof 98 98 98 98
gravel 76 85 89 91
dirt 72 82 87 89
newly graded 77 86 91 94
meadow 30 58 71 78
brush, poor 48 67 77 83
brush, fair 35 56 70 77
brush, good 30 48 65 73
woods-grass, poor 57 73 82 86
woods-grass, fair 43 65 76 82
woods-grass, good 32 58 72 79
woods, poor 45 66 77 83
woods, fair 36 60 73 79
woods, good 30 55 70 77`;

describe('curve numbers', () => {
  test('are those of the published tables', () => {
    const lines = Object.entries(CURVE_NUMBERS).map(
      ([cover, { A, B, C, D }]) => `${cover} ${A} ${B} ${C} ${D}`,
    );
    expect(lines.join('\n')).toBe(PUBLISHED.trim());
  });

  test('rise from sand to clay and with worse cover', () => {
    for (const { A, B, C, D } of Object.values(CURVE_NUMBERS)) {
      expect(A <= B && B <= C && C <= D).toBe(true);
    }
  });

  test('connected pavement adds in proportion, all pavement is 98', () => {
    expect(connectedCurveNumber({ perviousCurveNumber: 61, imperviousPercent: 0 })).toBe(61);
    expect(connectedCurveNumber({ perviousCurveNumber: 61, imperviousPercent: 100 })).toBe(
      IMPERVIOUS_CURVE_NUMBER,
    );
    expect(connectedCurveNumber({ perviousCurveNumber: 74, imperviousPercent: 25 })).toBe(80);
  });

  test('unconnected pavement adds half as much, below 30 % only', () => {
    const at = (imperviousPercent: number, unconnected: number): number =>
      unconnectedCurveNumber({ perviousCurveNumber: 74, imperviousPercent }, unconnected);
    expect(at(25, 0)).toBe(80);
    expect(at(25, 1)).toBe(77);
    expect(at(29.9, 1)).toBeLessThan(
      connectedCurveNumber({ perviousCurveNumber: 74, imperviousPercent: 29.9 }),
    );
    expect(at(30, 1)).toBe(
      connectedCurveNumber({ perviousCurveNumber: 74, imperviousPercent: 30 }),
    );
  });

  test('weighting lies between the parts', () => {
    expect(
      weightedCurveNumber([
        { area: 1, curveNumber: 60 },
        { area: 3, curveNumber: 80 },
      ]),
    ).toBe(75);
  });
});

describe('runoff', () => {
  test('starts when a fifth of the storage is filled', () => {
    expect(storageInches(80)).toBe(2.5);
    expect(storageInches(100)).toBe(0);
    expect(storageInches(1)).toBe(990);
    expect(runoffInches(0.5, 80)).toBe(0);
    expect(runoffInches(0.51, 80)).toBeGreaterThan(0);
    expect(runoffInches(0, 80)).toBe(0);
  });

  test('of a sealed surface is all the rain', () => expect(runoffInches(3, 100)).toBe(3));

  test('no curve number lies outside 0 to 100', () => {
    expect(() => storageInches(0)).toThrow(/0/);
    expect(() => storageInches(101)).toThrow(/101/);
    expect(() => storageInches(Number.NaN)).toThrow();
  });

  test('rises with rain and curve number and never exceeds the rain', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 150 }),
        fc.integer({ min: 30, max: 98 }),
        (tenths, number) => {
          const rain = tenths / 10;
          expect(runoffInches(rain + 0.1, number)).toBeGreaterThanOrEqual(
            runoffInches(rain, number),
          );
          expect(runoffInches(rain, number + 1)).toBeGreaterThanOrEqual(runoffInches(rain, number));
          expect(runoffInches(rain, number)).toBeLessThanOrEqual(rain);
        },
      ),
    );
  });

  test('a worse cover saves less than nothing', () => {
    const change = {
      areaSqFt: 12_000,
      rainInches: 2.4,
      curveNumberBefore: 65,
      curveNumberAfter: 80,
    };
    expect(runoffSavedCuFt(change)).toBeCloseTo(-559, 0);
    expect(cubicFeetOf(1_200, 3)).toBe(300);
  });
});

describe('soil and cover of a site', () => {
  const groups = Object.entries({
    sand: 'A',
    sandy: 'A',
    'loamy sand': 'A',
    'sandy loam': 'A',
    'silt loam': 'B',
    loam: 'B',
    'sandy clay loam': 'C',
    'clay loam': 'D',
    'silty clay loam': 'D',
    'sandy clay': 'D',
    'silty clay': 'D',
    clay: 'D',
  });

  test.each(groups)('%s is of group %s', (texture, group) => {
    expect(soilGroupOf(known(texture))).toEqual(known(group));
  });

  test('fill and unknown soil have no group', () => {
    expect(soilGroupOf(known('urban fill'))).toEqual(UNKNOWN);
    expect(soilGroupOf(UNKNOWN)).toEqual(UNKNOWN);
    expect(soilGroupOf(known(' Clay Loam '))).toEqual(known('D'));
  });

  test('words of a site walk stand for covers, others for none', () => {
    expect(coverBefore('Mown turf ')).toBe('lawn, good (grass above 75 %)');
    expect(coverBefore('worn turf')).toBe('lawn, fair (50 to 75 %)');
    expect(coverBefore('rough turf')).toBe('lawn, fair (50 to 75 %)');
    expect(coverBefore('tired shrubs')).toBe('brush, fair');
    expect(coverBefore('tired shrub bed')).toBe('brush, fair');
    expect(coverBefore('bare')).toBe('newly graded');
    expect(coverBefore('gravel')).toBe('gravel');
    expect(coverBefore('pavement')).toBe('paved, roof');
    expect(coverBefore('parking')).toBeUndefined();
  });

  test('a planted site is weighted by its components', () => {
    const shares = {
      'annual-bed': 0.2,
      'perennial-bed': 0.2,
      woody: 0.2,
      'rain-garden': 0.1,
      meadow: 0.1,
      path: 0.2,
    };
    const expected = 0.2 * 76 + 0.2 * 72 + 0.2 * 65 + 0.1 * 65 + 0.1 * 71 + 0.2 * 89;
    expect(plantedCurveNumber(shares, 'C')).toBeCloseTo(expected, 9);
    expect(COVER_OF_COMPONENT.path).toBe('gravel');
  });
});

describe('rain tank', () => {
  const roof = { areaSqFt: 1_000, runoffShare: 0.9, firstFlushInches: 0.02 };

  test('catches rain above the first flush', () => {
    expect(capturedGallons(1.02, roof)).toBeCloseTo(gallonsOf(1_000, 1) * 0.9, 9);
    expect(capturedGallons(0.01, roof)).toBe(0);
  });

  test('meets demand from stock and the day’s rain, and spills the rest', () => {
    const days = [
      { rainInches: 0, demandGallons: 60 },
      { rainInches: 1.02, demandGallons: 0 },
      { rainInches: 0, demandGallons: 700 },
    ];
    const [first, second, third] = tankBalance(days, { gallons: 500, openingGallons: 100 }, roof);
    expect(first).toEqual({ captured: 0, supplied: 60, unmet: 0, overflow: 0, closing: 40 });
    expect(second?.closing).toBe(500);
    expect(second?.overflow).toBeCloseTo(40 + 561.04 - 500, 1);
    expect(third).toMatchObject({ supplied: 500, unmet: 200, closing: 0 });
  });

  test('no gallon is lost or made', () => {
    const day = fc.record({
      rainInches: fc.constantFrom(0, 0, 0.1, 0.7, 2),
      demandGallons: fc.nat(300),
    });
    fc.assert(
      fc.property(
        fc.array(day, { minLength: 1, maxLength: 60 }),
        fc.nat(1_000),
        (days, gallons) => {
          const result = tankBalance(days, { gallons, openingGallons: gallons / 2 }, roof);
          const sum = (pick: (day: (typeof result)[number]) => number): number =>
            result.reduce((total, each) => total + pick(each), 0);
          const balance =
            gallons / 2 + sum((d) => d.captured) - sum((d) => d.supplied) - sum((d) => d.overflow);
          expect(balance).toBeCloseTo(result.at(-1)!.closing, 6);
          result.forEach((each, i) => {
            expect(each.supplied + each.unmet).toBeCloseTo(days[i]!.demandGallons, 9);
            expect(each.closing).toBeLessThanOrEqual(gallons);
            expect(Math.min(each.overflow, each.unmet, each.closing)).toBeGreaterThanOrEqual(0);
          });
        },
      ),
    );
  });

  test('a larger tank never meets less', () => {
    const days = Array.from({ length: 90 }, (_, i) => ({
      rainInches: i % 9 === 0 ? 0.6 : 0,
      demandGallons: 45,
    }));
    const met = [0, 200, 400, 800].map((gallons) =>
      demandMet(tankBalance(days, { gallons, openingGallons: 0 }, roof)),
    );
    expect([...met].sort((a, b) => a - b)).toEqual(met);
    expect(met[3]).toBeGreaterThan(met[1]!);
  });

  test('no demand is always met', () => {
    expect(demandMet([])).toBe(1);
    const day = { captured: 0, overflow: 0, closing: 0 };
    expect(demandMet([{ ...day, supplied: 30, unmet: 10 }])).toBe(0.75);
    expect(demandMet([{ ...day, supplied: 20, unmet: 20 }])).toBe(0.5);
  });
});

describe('irrigation', () => {
  const need = {
    areaSqFt: 1_000,
    referenceInches: 1.5,
    plantFactor: 0.8,
    effectiveRainInches: 0.2,
    efficiency: 0.8,
  };

  test('replaces what plants use beyond the rain', () => {
    expect(irrigationGallons(need)).toBeCloseTo(gallonsOf(1_000, 1) / 0.8, 6);
  });

  test('is nothing in a wet week', () =>
    expect(irrigationGallons({ ...need, effectiveRainInches: 2 })).toBe(0));
});
