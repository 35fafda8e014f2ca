import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { COMPONENTS, type Component } from '#domain/component.js';
import { rollFactor, sheetFactor } from '#estimating/takeoff/cardboard.js';
import { componentAreas, componentShareFindings } from '#estimating/takeoff/component-areas.js';
import { edgingFt, pathFt } from '#estimating/takeoff/edging.js';
import { layerCuYd, poundsOf, settledInches } from '#estimating/takeoff/layers.js';
import { limitedBy, loadsOf } from '#estimating/takeoff/loads.js';
import { type MulchDesign, mulchTakeoff } from '#estimating/takeoff/mulch-takeoff.js';
import { plantsNeeded, TRIANGULAR_FACTOR } from '#estimating/takeoff/plants.js';
import { meanInches, undisturbedSqFt } from '#estimating/takeoff/root-exclusion.js';
import { daysOnSite, largestPileCuYd, pileFootprintSqFt } from '#estimating/takeoff/staging.js';
import { runOutsideChecks } from './outside/outside-check.js';
import { takeoffChecks } from './outside/takeoff.checks.js';

runOutsideChecks(takeoffChecks);

const SHARES = {
  'annual-bed': 0.1,
  'perennial-bed': 0.2,
  woody: 0.25,
  'rain-garden': 0.05,
  meadow: 0.1,
  path: 0.3,
};

function each(value: number): Record<Component, number> {
  return Object.fromEntries(COMPONENTS.map((c) => [c, value])) as Record<Component, number>;
}

describe('layers', () => {
  test('grow with area, depth and waste', () => {
    const layer = fc.record({
      areaSqFt: fc.integer({ min: 1, max: 60_000 }),
      depthInches: fc.integer({ min: 1, max: 12 }),
      waste: fc.constantFrom(0, 0.05, 0.15),
    });
    fc.assert(
      fc.property(layer, (l) => {
        expect(layerCuYd({ ...l, areaSqFt: l.areaSqFt + 1 })).toBeGreaterThan(layerCuYd(l));
        expect(layerCuYd({ ...l, depthInches: l.depthInches + 1 })).toBeGreaterThan(layerCuYd(l));
        expect(layerCuYd({ ...l, waste: l.waste + 0.01 })).toBeGreaterThan(layerCuYd(l));
      }),
    );
  });

  test('do not depend on the units they were measured in', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 5_000 }),
        fc.integer({ min: 1, max: 40 }),
        (squareMeters, centimeters) => {
          const cubicYards = layerCuYd({
            areaSqFt: squareMeters / 0.09290304,
            depthInches: centimeters / 2.54,
            waste: 0,
          });
          expect(cubicYards * 0.764554857984).toBeCloseTo((squareMeters * centimeters) / 100, 6);
        },
      ),
    );
  });

  test('two halves take what the whole takes', () => {
    const half = layerCuYd({ areaSqFt: 4_250, depthInches: 4, waste: 0.05 });
    expect(2 * half).toBeCloseTo(layerCuYd({ areaSqFt: 8_500, depthInches: 4, waste: 0.05 }), 9);
  });

  test('weigh their density and settle over winter', () => {
    expect(poundsOf(148, 1000)).toBe(148_000);
    expect(settledInches(4, 0.65)).toBeCloseTo(2.6, 12);
  });
});

describe('cardboard', () => {
  test('without lap nothing is wasted, with as much lap as sheet nothing is covered', () => {
    expect(sheetFactor({ lengthFt: 4, widthFt: 3, lapInches: 0 })).toBe(1);
    expect(rollFactor(6, 0)).toBe(1);
    expect(() => sheetFactor({ lengthFt: 4, widthFt: 3, lapInches: 36 })).toThrow(/leaves nothing/);
    expect(() => sheetFactor({ lengthFt: 3, widthFt: 4, lapInches: 36 })).toThrow(/leaves nothing/);
    expect(() => rollFactor(6, 72)).toThrow(/leaves nothing/);
  });
});

describe('loads', () => {
  const truck = { boxCuYd: 16, payloadLb: 22_000 };

  test('wet compost is limited by weight, chips by volume', () => {
    expect(loadsOf({ cubicYards: 126, pounds: 126 * 1400 }, truck)).toBe(9);
    expect(limitedBy({ cubicYards: 126, pounds: 126 * 1400 }, truck)).toBe('weight');
    expect(loadsOf({ cubicYards: 94, pounds: 94 * 500 }, truck)).toBe(6);
    expect(limitedBy({ cubicYards: 94, pounds: 94 * 500 }, truck)).toBe('volume');
    expect(limitedBy({ cubicYards: 16, pounds: 22_000 }, truck)).toBe('volume');
  });

  test('a full truck is one load, a shovel more is two, nothing is none', () => {
    expect(loadsOf({ cubicYards: 16, pounds: 0 }, truck)).toBe(1);
    expect(loadsOf({ cubicYards: 16.01, pounds: 0 }, truck)).toBe(2);
    expect(loadsOf({ cubicYards: 0, pounds: 0 }, truck)).toBe(0);
  });
});

describe('plants', () => {
  test('on a triangular grid need about 15.5 % more', () => {
    expect(TRIANGULAR_FACTOR).toBeCloseTo(1.155, 3);
    const bed = { bedSqFt: 1000, spacingFt: 2, spare: 0 };
    expect(plantsNeeded({ ...bed, grid: 'square' })).toBe(250);
    expect(plantsNeeded({ ...bed, grid: 'triangular' })).toBe(289);
  });

  test('spare plants come on top and part plants are ordered whole', () => {
    expect(plantsNeeded({ bedSqFt: 200, spacingFt: 1, grid: 'square', spare: 0.1 })).toBe(220);
    expect(plantsNeeded({ bedSqFt: 10, spacingFt: 3, grid: 'square', spare: 0 })).toBe(2);
    expect(plantsNeeded({ bedSqFt: 0, spacingFt: 3, grid: 'square', spare: 0 })).toBe(0);
  });

  test('no spacing is an error', () => {
    expect(() => plantsNeeded({ bedSqFt: 10, spacingFt: 0, grid: 'square', spare: 0 })).toThrow(
      /spacing/,
    );
  });
});

describe('edging and paths', () => {
  test('edge runs along the open perimeter and both sides of the path', () => {
    const site = { perimeterFt: 400, heldByPavementFt: 120, pathSqFt: 500, pathWidthFt: 5 };
    expect(pathFt(site)).toBe(100);
    expect(edgingFt(site)).toBe(280 + 200);
    expect(edgingFt({ ...site, heldByPavementFt: 900 })).toBe(200);
  });

  test('no path needs no width, a path does', () => {
    expect(pathFt({ pathSqFt: 0, pathWidthFt: 0 })).toBe(0);
    expect(pathFt({ pathSqFt: 10, pathWidthFt: 0.5 })).toBe(20);
    expect(() => pathFt({ pathSqFt: 10, pathWidthFt: 0 })).toThrow(/width/);
  });
});

describe('staging', () => {
  test('a cone of 27 cu ft that is 3 ft high covers 27 sf', () => {
    expect(pileFootprintSqFt({ cubicYards: 1, heightFt: 3 })).toBeCloseTo(27, 9);
  });

  test('material lies as long as the slower of delivering and spreading takes', () => {
    expect(daysOnSite({ cubicYards: 120, deliveredPerDay: 64, spreadPerDay: 50 })).toBe(3);
    expect(daysOnSite({ cubicYards: 120, deliveredPerDay: 30, spreadPerDay: 50 })).toBe(4);
  });

  test('the pile is largest when the last truck has come', () => {
    expect(largestPileCuYd({ cubicYards: 120, deliveredPerDay: 60, spreadPerDay: 40 })).toBe(80);
    expect(largestPileCuYd({ cubicYards: 120, deliveredPerDay: 60, spreadPerDay: 60 })).toBe(60);
    expect(largestPileCuYd({ cubicYards: 40, deliveredPerDay: 60, spreadPerDay: 80 })).toBe(40);
    expect(largestPileCuYd({ cubicYards: 40, deliveredPerDay: 60, spreadPerDay: 20 })).toBe(40);
  });
});

describe('root protection', () => {
  test('depth inside is held to what roots may carry', () => {
    const layer = { areaSqFt: 1000, designInches: 4, protectedShare: 0.25, mostInches: 1 };
    expect(meanInches(layer)).toBe(3.25);
    expect(meanInches({ ...layer, mostInches: 6 })).toBe(4);
    expect(meanInches({ ...layer, protectedShare: 0 })).toBe(4);
    expect(meanInches({ ...layer, protectedShare: 1 })).toBe(1);
    expect(undisturbedSqFt(layer)).toBe(250);
  });
});

describe('components', () => {
  test('areas add up to the site', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60_000 }), (area) => {
        const total = Object.values(componentAreas(area, SHARES)).reduce((a, b) => a + b, 0);
        expect(total).toBeCloseTo(area, 6);
      }),
    );
    expect(componentAreas(9_000, SHARES).woody).toBe(2_250);
  });

  test('shares beyond the site are rejected', () => {
    expect(componentShareFindings(SHARES)).toEqual([]);
    const [finding] = componentShareFindings({ ...SHARES, path: 0.4 });
    expect(finding).toMatchObject({ field: 'shares', severity: 'reject' });
    expect(finding?.problem).toContain('1.1000');
    expect(finding?.remedy).toContain('area of the site');
    expect(componentShareFindings({ ...SHARES, path: 0.5, woody: 0.05 })).toEqual([]);
    expect(componentShareFindings({ ...SHARES, path: 0.6, woody: -0.05 })).toHaveLength(1);
  });
});

describe('takeoff of a sheet mulch', () => {
  const design = (): MulchDesign => ({
    areasSqFt: componentAreas(9_700, SHARES),
    compostInches: { ...each(4), meadow: 0, path: 0 },
    chipInches: { ...each(3), meadow: 0 },
    waste: 0.05,
    rootProtectedShare: 0,
    barrier: 'cardboard-sheets',
  });

  test('lays each layer where the design has it', () => {
    const takeoff = mulchTakeoff(design());
    expect(takeoff.compostCuYd).toBeCloseTo((9_700 * 0.6 * 4 * 1.05) / 324, 6);
    expect(takeoff.chipsCuYd).toBeCloseTo((9_700 * 0.9 * 3 * 1.05) / 324, 6);
    expect(takeoff.barrierSqFt).toBeCloseTo(9_700 * 0.9, 6);
  });

  test('without a barrier takes deeper chips and no cardboard', () => {
    const bare = mulchTakeoff({ ...design(), barrier: 'none' });
    expect(bare.barrierSqFt).toBe(0);
    expect(bare.chipsCuYd).toBeCloseTo((9_700 * 0.9 * 10 * 1.05) / 324, 6);
    expect(bare.compostCuYd).toBeCloseTo(mulchTakeoff(design()).compostCuYd, 9);
    const deep = mulchTakeoff({ ...design(), chipInches: each(11), barrier: 'none' });
    expect(deep.chipsCuYd).toBeCloseTo((9_700 * 11 * 1.05) / 324, 6);
    const thin = { ...design(), chipInches: each(1) };
    expect(mulchTakeoff(thin).barrierSqFt).toBeCloseTo(9_700, 6);
    const alone = mulchTakeoff({ ...thin, barrier: 'none' });
    expect(alone.chipsCuYd).toBeCloseTo((9_700 * 10 * 1.05) / 324, 6);
    expect(mulchTakeoff({ ...design(), barrier: 'cardboard-rolls' })).toEqual(
      mulchTakeoff(design()),
    );
  });

  test('inside root protection compost and chips are held back', () => {
    const rooted = mulchTakeoff({ ...design(), chipInches: each(6), rootProtectedShare: 0.5 });
    expect(rooted.compostCuYd).toBeCloseTo((9_700 * 0.6 * 2.5 * 1.05) / 324, 6);
    expect(rooted.chipsCuYd).toBeCloseTo((9_700 * 4.5 * 1.05) / 324, 6);
  });

  test('what roots may carry can be set by the arborist', () => {
    const own = {
      'takeoff.root-protection-compost-inches': {
        value: 0,
        basis: 'campus record',
        source: 'arborist',
      },
    } as const;
    const none = mulchTakeoff({ ...design(), rootProtectedShare: 1 }, own);
    expect(none.compostCuYd).toBe(0);
  });
});
