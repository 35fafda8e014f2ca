import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { known, UNKNOWN } from '#units/known.js';
import { type Batch, batchGrade, batchTests } from '#estimating/compost/batch-gate.js';
import { chipRefusals } from '#estimating/compost/chips.js';
import { compostMadeCuYd } from '#estimating/compost/food-waste.js';
import { heatTreated, longestHotRun } from '#estimating/compost/heat-log.js';
import { purchaseDollars, ripeIn, stockBySeason } from '#estimating/compost/stock.js';
import { runOutsideChecks } from './outside/outside-check.js';
import { compostChecks } from './outside/compost.checks.js';

runOutsideChecks(compostChecks);

const RULE = { fahrenheit: 131, windrowDays: 15, windrowTurnings: 5, vesselDays: 3 };
const day = (fahrenheit: number, turned = false) => ({ fahrenheit, turned });
const hot = (days: number, turnings = 0) =>
  Array.from({ length: days }, (_, i) => day(140, i < turnings));

describe('yield', () => {
  const composting = {
    foodTons: 100,
    capture: 0.5,
    bulkingPerTon: 1,
    massYield: 0.5,
    poundsPerCuYd: 1000,
    shareToProgram: 1,
  };

  test('denser compost is fewer yards, no share is none', () => {
    expect(compostMadeCuYd(composting)).toBe(100);
    expect(compostMadeCuYd({ ...composting, poundsPerCuYd: 2000 })).toBe(50);
    expect(compostMadeCuYd({ ...composting, bulkingPerTon: 0 })).toBe(50);
    expect(compostMadeCuYd({ ...composting, shareToProgram: 0 })).toBe(0);
  });
});

describe('heat log', () => {
  test('a windrow needs its turnings on hot days', () => {
    expect(heatTreated(hot(15, 4), 'windrow', RULE)).toBe(false);
    const turnedCold = [...hot(15, 4), day(90, true)];
    expect(heatTreated(turnedCold, 'windrow', RULE)).toBe(false);
    expect(heatTreated([...turnedCold, day(131, true)], 'windrow', RULE)).toBe(true);
  });

  test('a vessel or aerated pile needs its days running', () => {
    const broken = [day(131), day(131), day(130.9), day(131)];
    expect(longestHotRun(broken, 131)).toBe(2);
    expect(heatTreated(broken, 'aerated-static-pile', RULE)).toBe(false);
    expect(heatTreated([...broken, day(131), day(150)], 'aerated-static-pile', RULE)).toBe(true);
    expect(heatTreated(hot(15, 5), 'in-vessel', RULE)).toBe(true);
    expect(longestHotRun([], 131)).toBe(0);
    expect(longestHotRun([day(131), day(90), day(131), day(131)], 131)).toBe(2);
  });
});

describe('batch', () => {
  const good: Batch = {
    id: '2028-03',
    method: 'windrow',
    heatLog: known(hot(16, 5)),
    carbonToNitrogen: known(18),
    mature: known(true),
    bioassayPassed: known(true),
    metalsWithinLimits: known(true),
    freeOfSharpsAndPlastic: known(true),
    jumpingWormStatement: known(true),
  };
  const grade = (changes: Partial<Batch>): string =>
    batchGrade(batchTests({ ...good, ...changes }, RULE));

  test('is certified when every test has passed', () => {
    expect(grade({})).toBe('certified');
    expect(grade({ carbonToNitrogen: known(25) })).toBe('certified');
  });

  test('is never certified while a test is missing', () => {
    const facts = [
      'heatLog',
      'carbonToNitrogen',
      'mature',
      'bioassayPassed',
      'metalsWithinLimits',
      'freeOfSharpsAndPlastic',
      'jumpingWormStatement',
    ] as const;
    for (const fact of facts) expect(grade({ [fact]: UNKNOWN })).toBe('other');
  });

  test('that was not hot enough or is raw goes to other ground', () => {
    expect(grade({ heatLog: known(hot(3)) })).toBe('other');
    expect(grade({ carbonToNitrogen: known(25.1) })).toBe('other');
    expect(grade({ mature: known(false) })).toBe('other');
  });

  test('that spreads harm goes nowhere', () => {
    expect(grade({ bioassayPassed: known(false) })).toBe('hold');
    expect(grade({ metalsWithinLimits: known(false) })).toBe('hold');
    expect(grade({ jumpingWormStatement: known(false) })).toBe('hold');
    expect(grade({ freeOfSharpsAndPlastic: known(false), heatLog: UNKNOWN })).toBe('hold');
  });

  test('names each test and what clears it', () => {
    const tests = batchTests({ ...good, heatLog: UNKNOWN, mature: known(false) }, RULE);
    expect(tests.map(({ name, status }) => `${name}: ${status}`)).toEqual([
      'heat: unknown',
      'carbon to nitrogen: pass',
      'maturity: fail',
      'herbicide bioassay: pass',
      'metals: pass',
      'sharps and plastic: pass',
      'jumping worms: pass',
    ]);
    for (const { clearedBy } of tests) expect(clearedBy.length).toBeGreaterThan(20);
  });
});

describe('stock', () => {
  test('buys what is short and gives away what the yard cannot hold', () => {
    const rows = stockBySeason(
      [
        { matured: 100, wanted: 20 },
        { matured: 0, wanted: 120 },
        { matured: 10, wanted: 0 },
      ],
      { openingCuYd: 60, yardCuYd: 90 },
    );
    expect(rows).toEqual([
      { opening: 60, matured: 100, used: 20, bought: 0, givenAway: 50, closing: 90 },
      { opening: 90, matured: 0, used: 120, bought: 30, givenAway: 0, closing: 0 },
      { opening: 0, matured: 10, used: 0, bought: 0, givenAway: 0, closing: 10 },
    ]);
  });

  test('every season balances', () => {
    const season = fc.record({ matured: fc.nat(200), wanted: fc.nat(200) });
    fc.assert(
      fc.property(fc.array(season, { maxLength: 24 }), fc.nat(300), (seasons, yard) => {
        for (const row of stockBySeason(seasons, { openingCuYd: yard / 2, yardCuYd: yard })) {
          expect(row.opening + row.matured + row.bought).toBeCloseTo(
            row.used + row.givenAway + row.closing,
            9,
          );
          expect(row.closing).toBeLessThanOrEqual(yard);
          expect(Math.min(row.closing, row.bought, row.givenAway)).toBeGreaterThanOrEqual(0);
          expect(row.bought > 0 && row.givenAway > 0).toBe(false);
        }
      }),
    );
  });

  test('ripens after whole seasons', () => {
    expect(ripeIn(2, 6, 3)).toBe(4);
    expect(ripeIn(2, 7, 3)).toBe(5);
    expect(purchaseDollars(20, 42)).toBe(840);
  });
});

describe('chips', () => {
  const oak = [{ species: 'oak', zones: ['north county'] }];

  test('of a regulated species need a known origin outside the quarantine', () => {
    expect(chipRefusals({ cubicYards: 20, species: ['oak'], origin: 'campus' }, oak)).toEqual([]);
    expect(chipRefusals({ cubicYards: 20, species: ['maple'] }, oak)).toEqual([]);
    expect(chipRefusals({ cubicYards: 20, species: ['oak'] }, oak)[0]).toContain('not known');
    expect(
      chipRefusals({ cubicYards: 20, species: ['maple', 'oak'], origin: 'north county' }, oak),
    ).toEqual(['oak from north county is under quarantine']);
  });
});
