import { describe, expect, test } from 'vitest';
import { hiringDates, latestRequest } from '#estimating/labor-supply/hiring.js';
import { loadedCost, monthsWorked, vacancyShare } from '#estimating/labor-supply/ramp.js';
import { hoursAfterSupervision, productiveHours } from '#estimating/labor-supply/staff.js';
import { courseHours, studentHours } from '#estimating/labor-supply/students.js';
import { useFindings } from '#estimating/labor-supply/use.js';
import {
  breakEvenPeoplePerLeader,
  contractorHours,
  volunteerHours,
} from '#estimating/labor-supply/volunteers.js';
import { supplyChecks } from './outside/labor.checks.js';
import { runOutsideChecks } from './outside/outside-check.js';

runOutsideChecks(supplyChecks);

describe('staff', () => {
  test('losses above the whole leave nothing, not less', () => {
    expect(productiveHours({ paidHours: 100, leave: 0.5, meetings: 0.4, weather: 0.3 })).toBe(0);
    expect(
      productiveHours({ paidHours: 100, leave: 0.1, meetings: 0.2, weather: 0.3 }),
    ).toBeCloseTo(40, 9);
  });

  test('leading others takes from one’s own hours', () => {
    expect(hoursAfterSupervision(468, 120)).toBe(348);
    expect(hoursAfterSupervision(100, 120)).toBe(0);
  });
});

describe('students and courses', () => {
  const fall = {
    students: 10,
    termWeeks: 15,
    examWeeks: 1,
    breakWeeks: 0,
    termHoursPerWeek: 8,
    breakHoursPerWeek: 30,
    productivity: 0.65,
  };

  test('ten term students give 780 h in fall', () =>
    expect(studentHours(fall)).toBeCloseTo(780, 9));

  test('exam weeks add nothing', () => {
    expect(studentHours({ ...fall, examWeeks: 3 })).toBe(studentHours(fall));
  });

  test('three interns give 702 h over 12 weeks of break at 30 h', () => {
    const summer = { ...fall, students: 3, termWeeks: 0, breakWeeks: 12 };
    expect(studentHours(summer)).toBeCloseTo(3 * 12 * 30 * 0.65, 9);
  });

  test('nobody works above 20 h in term or 40 h in breaks', () => {
    const over = {
      ...fall,
      students: 1,
      termWeeks: 1,
      breakWeeks: 1,
      termHoursPerWeek: 25,
      breakHoursPerWeek: 45,
    };
    expect(studentHours({ ...over, productivity: 1 })).toBe(60);
  });

  test('a lab section of 24', () => {
    expect(
      courseHours({ sections: 2, studentsEach: 24, labHours: 10, effectiveness: 0.35 }),
    ).toBeCloseTo(168, 9);
  });
});

describe('volunteers and contractors', () => {
  test('five fall Sundays with two shifts of 55', () => {
    const hours = volunteerHours({
      events: 10,
      signUpsEach: 55,
      showRate: 0.62,
      hours: 3,
      effectiveness: 0.45,
    });
    expect(hours).toBeCloseTo(460.35, 6);
  });

  test('about three people per leader break even at 0.35', () => {
    expect(breakEvenPeoplePerLeader(0.35)).toBeCloseTo(2.857, 3);
  });

  test('money buys hours', () => {
    expect(contractorHours(10_000, 80)).toBe(125);
    expect(contractorHours(10, 0.5)).toBe(20);
    expect(() => contractorHours(10_000, 0)).toThrow(/above \$0/);
  });
});

describe('hiring', () => {
  const path = {
    requestMonth: 11,
    decisionMonth: 3,
    fundingMonth: 7,
    recruitMonths: 4,
    rampMonths: 3,
  };

  test('each step comes after the one before', () => {
    expect(hiringDates(path, 2032)).toEqual({
      request: { year: 2032, month: 11 },
      decision: { year: 2033, month: 3 },
      funded: { year: 2033, month: 7 },
      starts: { year: 2033, month: 11 },
      fullyProductive: { year: 2034, month: 2 },
    });
  });

  test('a decision in the month of the request waits a year', () => {
    const slow = { ...path, decisionMonth: 11, fundingMonth: 12 };
    expect(hiringDates(slow, 2032).decision).toEqual({ year: 2033, month: 11 });
    expect(hiringDates(slow, 2032).funded).toEqual({ year: 2033, month: 12 });
  });

  test('the request is the latest that is early enough', () => {
    expect(latestRequest(path, { year: 2034, month: 2 }).request.year).toBe(2032);
    expect(latestRequest(path, { year: 2034, month: 1 }).request.year).toBe(2031);
    expect(latestRequest(path, { year: 2035, month: 1 }).request.year).toBe(2032);
  });

  test('months before the start have none, ramp months part, the rest all hours', () => {
    const ramp = { rampMonths: 3, rampProductivity: 0.6 };
    expect(monthsWorked([100, 100, 100, 100, 100, 100], 1, ramp)).toEqual([
      0, 60, 60, 60, 100, 100,
    ]);
    expect(monthsWorked([100, 80], 0, { rampMonths: 0, rampProductivity: 0.6 })).toEqual([100, 80]);
  });

  test('attrition leaves a part of the hours vacant', () => {
    expect(vacancyShare(0.12, 5)).toBeCloseTo(0.05, 12);
  });

  test('benefits come on top of a salary', () =>
    expect(loadedCost(45_000, 0.35)).toBeCloseTo(60_750, 9));
});

describe('use of a pool', () => {
  const use = (neededHours: number) =>
    useFindings({ pool: 'gardener', season: 'summer', neededHours, hours: 400, warnAt: 0.85 });

  test('up to 85 % passes, from there on is named, above 100 % is refused', () => {
    expect(use(339.9)).toEqual([]);
    expect(use(340)[0]).toMatchObject({ severity: 'warn', field: 'gardener, summer', value: 340 });
    expect(use(340)[0]?.problem).toContain('85 %');
    expect(use(340)[0]?.remedy).toContain('Keep some hours free');
    expect(use(400)[0]?.severity).toBe('warn');
    expect(use(401)[0]).toMatchObject({ severity: 'reject', problem: '401 h are needed of 400 h' });
    expect(use(401)[0]?.remedy).toContain('unserved in the open');
  });
});
