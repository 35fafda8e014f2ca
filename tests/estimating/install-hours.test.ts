import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { haulFactor } from '#estimating/install-hours/haul.js';
import { installTasks } from '#estimating/install-hours/install-tasks.js';
import { leadersNeeded, netVolunteerHours } from '#estimating/install-hours/leaders.js';
import { buildsAfterTurnover, learningShare } from '#estimating/install-hours/learning.js';
import { hoursOf, taskHours } from '#estimating/install-hours/task-hours.js';
import { betaOf, chanceOf, chanceOfAtLeast, logGamma } from '#estimating/install-hours/turnout.js';
import {
  signUpsNeeded,
  turnoutsNeeded,
  workDaysNeeded,
} from '#estimating/install-hours/work-day.js';
import { installChecks } from './outside/labor.checks.js';
import { runOutsideChecks } from './outside/outside-check.js';

runOutsideChecks(installChecks);

const QUANTITIES = {
  preparedSqFt: 10_000,
  compostCuYd: 130,
  chipsCuYd: 97.5,
  barrierSqFt: 10_000,
  plugs: 640,
  gallonPlants: 160,
  trees: 8,
  edgingFt: 400,
};

describe('tasks of an installation', () => {
  const byHand = () => installTasks(QUANTITIES, { haulFeet: 40, spreading: 'by-hand' });

  test('each takes quantity over rate', () => {
    const hours = Object.fromEntries(byHand().map((task) => [task.name, taskHours(task)]));
    expect(hours).toEqual({
      'mow low and aerate': 5,
      'spread compost': 200,
      'lay cardboard': 62.5,
      'spread chips': 130,
      'set edging': 16,
      'plant plugs': 20,
      'plant gallon plants': 20,
      'plant trees': 20,
    });
  });

  test('ten thousand square feet at 4 and 3 inches lie in the range crews report (350 to 550 h)', () => {
    expect(hoursOf(byHand())).toBeGreaterThan(350);
    expect(hoursOf(byHand())).toBeLessThan(550);
  });

  test('phases add up to the whole', () => {
    expect(hoursOf(byHand(), 'prepare')).toBeCloseTo(413.5, 9);
    expect(hoursOf(byHand(), 'plant')).toBeCloseTo(60, 9);
    expect(hoursOf(byHand())).toBeCloseTo(473.5, 9);
    expect(hoursOf([])).toBe(0);
  });

  test('a long haul slows spreading only', () => {
    const far = installTasks(QUANTITIES, { haulFeet: 220, spreading: 'by-hand' });
    expect(hoursOf(far) - hoursOf(byHand())).toBeCloseTo(0.306 * 330, 6);
  });

  test('a machine spreads compost faster and does not mind the haul', () => {
    const machine = installTasks(QUANTITIES, { haulFeet: 220, spreading: 'by-machine' });
    const hours = Object.fromEntries(machine.map((task) => [task.name, taskHours(task)]));
    expect(hours['spread compost']).toBeCloseTo(130 / 3.5, 9);
    expect(hours['spread chips']).toBe(130);
  });

  test('a campus’s own rate goes before the default', () => {
    const own = {
      'install.trees': { value: 0.8, basis: 'measured', source: 'sign-in sheets' },
    } as const;
    const tasks = installTasks(QUANTITIES, { haulFeet: 0, spreading: 'by-hand' }, own);
    expect(taskHours(tasks.find((t) => t.name === 'plant trees')!)).toBe(10);
  });

  test('a rate of zero is an error, not forever', () => {
    const task = {
      name: 'weed',
      quantity: 1,
      ratePerHour: 0,
      phase: 'prepare',
      factor: 1,
    } as const;
    expect(() => taskHours(task)).toThrow(/weed/);
    expect(() => taskHours({ ...task, ratePerHour: Number.NaN })).toThrow(/above 0/);
  });
});

describe('haul', () => {
  test('costs nothing up to the free distance', () => {
    expect(haulFactor({ haulFeet: 50, freeFeet: 50, perFoot: 0.0018 })).toBe(1);
    expect(haulFactor({ haulFeet: 0, freeFeet: 50, perFoot: 0.0018 })).toBe(1);
    expect(haulFactor({ haulFeet: 150, freeFeet: 50, perFoot: 0.002 })).toBeCloseTo(1.2, 12);
  });
});

describe('learning and forgetting', () => {
  test('the first build teaches nothing, and the floor holds', () => {
    expect(learningShare({ builds: 1, rate: 0.9, floor: 0.65 })).toBe(1);
    expect(learningShare({ builds: 2, rate: 0.9, floor: 0.65 })).toBeCloseTo(0.9, 12);
    expect(learningShare({ builds: 1000, rate: 0.9, floor: 0.65 })).toBe(0.65);
    expect(learningShare({ builds: 30, rate: 1, floor: 0.65 })).toBe(1);
  });

  test('a lead who leaves takes part of it along', () => {
    expect(buildsAfterTurnover(10, 0.5)).toBe(5);
    expect(buildsAfterTurnover(1, 0.5)).toBe(1);
  });

  test('hours never rise with experience', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 }),
        fc.integer({ min: 70, max: 100 }),
        (builds, rate) => {
          const share = (n: number): number =>
            learningShare({ builds: n, rate: rate / 100, floor: 0.65 });
          expect(share(builds + 1)).toBeLessThanOrEqual(share(builds));
        },
      ),
    );
  });
});

describe('leaders', () => {
  test('one more for each group begun', () => {
    expect([0, 1, 10, 11, 20, 21].map((n) => leadersNeeded(n, 10))).toEqual([0, 1, 1, 2, 2, 3]);
  });

  test('two volunteers and a leader are a loss; thirty are a gain', () => {
    expect(
      netVolunteerHours({ present: 2, hours: 3, effectiveness: 0.35, peopleEach: 10 }),
    ).toBeCloseTo(-0.9, 9);
    expect(
      netVolunteerHours({ present: 30, hours: 3, effectiveness: 0.45, peopleEach: 10 }),
    ).toBeCloseTo(31.5, 9);
  });
});

describe('who comes', () => {
  const turnout = fc.record({
    signUps: fc.integer({ min: 1, max: 150 }),
    showRate: fc.integer({ min: 30, max: 80 }).map((p) => p / 100),
    showSpread: fc.constantFrom(0, 0.05, 0.12),
  });

  test('chances of every number add up to 1 and have the stated mean', () => {
    fc.assert(
      fc.property(turnout, (t) => {
        const chances = Array.from({ length: t.signUps + 1 }, (_, n) => chanceOf(n, t));
        expect(chances.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 7);
        const mean = chances.reduce((sum, chance, n) => sum + chance * n, 0);
        expect(mean).toBeCloseTo(t.signUps * t.showRate, 5);
      }),
      { numRuns: 60 },
    );
  });

  test('the spread of the rate shows in the spread of the turnout', () => {
    const t = { signUps: 50, showRate: 0.6, showSpread: 0.1 };
    const variance = Array.from({ length: 51 }, (_, n) => chanceOf(n, t) * (n - 30) ** 2).reduce(
      (a, b) => a + b,
      0,
    );
    expect(variance).toBeCloseTo(50 * 0.6 * 0.4 + 50 * 49 * 0.01, 4);
  });

  test('a rate of nothing or all leaves no doubt', () => {
    expect(chanceOf(0, { signUps: 7, showRate: 0, showSpread: 0 })).toBe(1);
    expect(chanceOf(3, { signUps: 7, showRate: 0, showSpread: 0 })).toBe(0);
    expect(chanceOf(7, { signUps: 7, showRate: 1, showSpread: 0 })).toBe(1);
    expect(chanceOf(6, { signUps: 7, showRate: 1, showSpread: 0 })).toBe(0);
  });

  test('nobody is sure to come, more than signed up never', () => {
    const t = { signUps: 7, showRate: 0.5, showSpread: 0 };
    expect(chanceOfAtLeast(0, t)).toBe(1);
    expect(chanceOfAtLeast(-1, t)).toBe(1);
    for (const showSpread of [0, 0.1])
      for (const signUps of [7, 40, 90, 150])
        expect(chanceOfAtLeast(0, { signUps, showRate: 0.62, showSpread })).toBe(1);
    expect(chanceOfAtLeast(8, t)).toBe(0);
    expect(chanceOfAtLeast(1, t)).toBeCloseTo(1 - 0.5 ** 7, 9);
  });

  test('the logarithm of gamma is good to eleven digits', () => {
    expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.PI) / 2, 11);
    expect(logGamma(10)).toBeCloseTo(Math.log(362_880), 11);
  });

  test('no beta distribution is as wide as that', () => {
    expect(betaOf(0.5, Math.sqrt(1 / 12)).alpha).toBeCloseTo(1, 9);
    // Beta(1/4, 1/4) has the variance 1 / (4 (2 a + 1)) = 1/6.
    expect(betaOf(0.5, Math.sqrt(1 / 6)).alpha).toBeCloseTo(0.25, 9);
    const { alpha, beta } = betaOf(0.6, 0.1);
    expect([alpha, beta].map((x) => Number(x.toFixed(9)))).toEqual([13.8, 9.2]);
    expect(() => betaOf(0.5, 0.5)).toThrow(/0.5/);
  });
});

describe('work days', () => {
  test('turnouts are hours over length and effect, rounded up', () => {
    expect(turnoutsNeeded({ workHours: 350, dayHours: 3, effectiveness: 1 })).toBe(117);
    expect(turnoutsNeeded({ workHours: 550, dayHours: 3, effectiveness: 1 })).toBe(184);
    expect(turnoutsNeeded({ workHours: 549, dayHours: 3, effectiveness: 1 })).toBe(183);
    expect(turnoutsNeeded({ workHours: 90, dayHours: 3, effectiveness: 0.5 })).toBe(60);
    expect(turnoutsNeeded({ workHours: 0.3 * 3, dayHours: 0.3, effectiveness: 1 })).toBe(3);
  });

  test('the fewest sign-ups with which enough come', () => {
    const need = { present: 40, showRate: 0.6, showSpread: 0, confidence: 0.8 };
    const signUps = signUpsNeeded(need);
    expect(chanceOfAtLeast(40, { ...need, signUps })).toBeGreaterThanOrEqual(0.8);
    expect(chanceOfAtLeast(40, { ...need, signUps: signUps - 1 })).toBeLessThan(0.8);
    expect(signUpsNeeded({ ...need, showSpread: 0.1 })).toBeGreaterThan(signUps);
  });

  test('the least number is found for any need', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 80 }),
        fc.constantFrom(0.3, 0.6, 0.9),
        fc.constantFrom(0.5, 0.8, 0.95),
        (present, showRate, confidence) => {
          const need = { present, showRate, showSpread: 0, confidence };
          const signUps = signUpsNeeded(need);
          expect(signUps).toBeGreaterThanOrEqual(present);
          expect(chanceOfAtLeast(present, { ...need, signUps })).toBeGreaterThanOrEqual(confidence);
          if (signUps > present) {
            expect(chanceOfAtLeast(present, { ...need, signUps: signUps - 1 })).toBeLessThan(
              confidence,
            );
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  test('nobody is needed, or nobody ever comes', () => {
    expect(signUpsNeeded({ present: 0, showRate: 0.5, showSpread: 0, confidence: 0.9 })).toBe(0);
    expect(signUpsNeeded({ present: 3, showRate: 0, showSpread: 0, confidence: 0.9 })).toBe(
      Infinity,
    );
    expect(signUpsNeeded({ present: 1, showRate: 1, showSpread: 0, confidence: 0.9 })).toBe(1);
    const nobody = { showRate: 0, showSpread: 0.1, confidence: 0.9 };
    expect([0, 3].map((present) => signUpsNeeded({ ...nobody, present }))).toEqual([0, Infinity]);
    const hardly = { present: 1, showRate: 1e-6, showSpread: 0, confidence: 0.9 };
    expect(signUpsNeeded(hardly)).toBe(Infinity);
  });

  test('where everybody is sure to come, as many days as it takes, up to 200', () => {
    const sure = { showRate: 1, showSpread: 0, confidence: 1 };
    expect(signUpsNeeded({ ...sure, present: 5 })).toBe(5);
    expect(workDaysNeeded({ ...sure, signUps: 1, turnouts: 200 })).toBe(200);
    expect(workDaysNeeded({ ...sure, signUps: 1, turnouts: 201 })).toBe(Infinity);
  });

  test('two days of 70 sign-ups do not bring 117 people at a show rate of 0.62; three do', () => {
    const need = { turnouts: 117, signUps: 70, showRate: 0.62, showSpread: 0.05, confidence: 0.8 };
    expect(workDaysNeeded(need)).toBe(3);
    expect(workDaysNeeded({ ...need, turnouts: 80 })).toBe(2);
    expect(workDaysNeeded({ ...need, turnouts: 30 })).toBe(1);
    expect(workDaysNeeded({ ...need, turnouts: 1, signUps: 0 })).toBe(Infinity);
  });

  test('days even each other out', () => {
    const need = { turnouts: 170, signUps: 100, showRate: 0.6, showSpread: 0.1, confidence: 0.85 };
    expect(workDaysNeeded(need)).toBe(4);
    expect(workDaysNeeded({ ...need, showSpread: 0 })).toBe(3);
  });
});
