/** Hours that a plan has to work with, from invented round numbers. */
import { describe, expect, test } from 'vitest';
import { seasonInstance } from '#domain/calendar.js';
import type { PositionType, WorkDay } from '#domain/labor.js';
import { NO_DECISIONS, type Decisions } from '#domain/plan.js';
import { firstStartYear, positionHours } from '#estimating/season-supply/positions.js';
import { laborSources, poolHours, workDaysHeld } from '#estimating/season-supply/sources.js';
import { centiHours } from '#units/centihours.js';
import { cents } from '#units/cents.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { TINY_CALENDAR, tinyCampus, tinyPool } from '../support/tiny/tiny-campus.js';

const INVENTED = { basis: 'judgement', source: 'invented for a test' } as const;
const at = (index: number) => seasonInstance(TINY_CALENDAR, index);

const grower: PositionType = {
  id: 'grower',
  name: 'Grower',
  term: 'recurring',
  tasks: ['care-food', 'harvest'],
  startSeason: 'winter',
  leadMonths: 6,
  hours: { summer: centiHours(300_00), fall: centiHours(200_00), winter: centiHours(100_00) },
  firstYearHours: { summer: centiHours(9_00), winter: centiHours(40_00) },
  annualCost: cents(0),
  firstYearCost: cents(0),
  oneTimeCost: cents(0),
  most: 3,
  provenance: INVENTED,
};

describe('Hours of a position that starts in the second year', () => {
  const hours = (index: number, position = grower) =>
    positionHours(TINY_CALENDAR, position, { startYear: 1, season: at(index) });

  test('none before its start season, then those of the first year, then full ones', () => {
    // Seasons 4 to 7 are the year of the start; winter is 6.
    expect([2, 4, 5, 6, 7].map((index) => hours(index))).toEqual([0, 0, 0, 40_00, 0]);
    expect([8, 9, 10, 11].map((index) => hours(index))).toEqual([300_00, 200_00, 100_00, 0]);
  });

  test('none after the year of the start where it is for one season', () => {
    const once: PositionType = { ...grower, term: 'one-season' };
    expect([6, 8, 10].map((index) => hours(index, once))).toEqual([40_00, 0, 0]);
  });
});

describe('First year in which a position can start', () => {
  // Planned on 25 November 2026; winter of FY28 opens on 1 December 2027, of FY29 a year later.
  const first = (leadMonths: number, startSeason = 'winter') =>
    firstStartYear(TINY_CALENDAR, { ...grower, leadMonths, startSeason });

  test('is the one whose start season opens no sooner than the lead time is over', () => {
    expect([0, 12, 13, 24, 25].map((months) => first(months))).toEqual([0, 0, 1, 1, 2]);
    expect(first(12, 'fall')).toBe(1);
  });

  test('opening on the very day is soon enough', () => {
    const calendar = { ...TINY_CALENDAR, planningDate: '2026-12-01' };
    expect(firstStartYear(calendar, { ...grower, leadMonths: 12 })).toBe(0);
  });

  test('is past horizon and tail where the lead time is longer than both', () => {
    expect(first(600)).toBe(8);
  });
});

test('a pool has hours from its first year to its last', () => {
  const pool = { ...tinyPool('crew', 10), from: fiscalYear(2029), to: fiscalYear(2030) };
  expect([0, 4, 8, 12].map((index) => poolHours(pool, at(index)))).toEqual([0, 10_00, 10_00, 0]);
  expect(poolHours({ ...pool, hours: {} }, at(4))).toBe(0);
  expect([0, 12].map((index) => poolHours(tinyPool('all', 10), at(index)))).toEqual([10_00, 10_00]);
});

describe('Sources of a season', () => {
  const day: WorkDay = {
    id: 'day',
    name: 'Planting day',
    season: 'winter',
    mostPerSeason: 5,
    hoursEach: centiHours(80_00),
    leaderHoursEach: centiHours(8_00),
    tasks: ['plant'],
    peoplePresent: 30,
    leaders: 3,
    provenance: INVENTED,
  };
  const campus = tinyCampus({
    pools: [tinyPool('crew', 10), tinyPool('nobody', 0)],
    workDays: [day],
    positions: [grower],
  });
  const decisions: Decisions = {
    ...NO_DECISIONS,
    workDays: [
      { workDay: 'day', year: fiscalYear(2030), count: 2 },
      { workDay: 'day', year: fiscalYear(2030), count: 1 },
      { workDay: 'other', year: fiscalYear(2030), count: 9 },
      { workDay: 'day', year: fiscalYear(2029), count: 4 },
    ],
    hires: [
      { position: 'grower', year: fiscalYear(2029), count: 2 },
      { position: 'grower', year: fiscalYear(2030), count: 1 },
      { position: 'other', year: fiscalYear(2029), count: 7 },
    ],
  };
  const hoursOf = (index: number) =>
    laborSources(campus, decisions, at(index)).map(({ id, hours }) => [id, hours]);

  test('are pools, work days held and positions, less those without hours', () => {
    // Winter of FY30: three days of 80 h; two growers in full, one in the first year.
    expect(hoursOf(10)).toEqual([
      ['crew', 10_00],
      ['day', 240_00],
      ['grower', 2 * 100_00 + 40_00],
    ]);
    expect(hoursOf(0)).toEqual([['crew', 10_00]]);
    // No work day in summer; the one in its first year is not there yet.
    expect(hoursOf(8)).toEqual([
      ['crew', 10_00],
      ['grower', 2 * 300_00],
    ]);
  });

  test('say who they are and what they may do', () => {
    expect(laborSources(campus, decisions, at(10)).slice(1)).toMatchObject([
      { name: 'Planting day', tasks: ['plant'] },
      { name: 'Grower', tasks: ['care-food', 'harvest'] },
    ]);
  });

  test('work days count by kind and fiscal year', () => {
    expect(workDaysHeld(decisions, 'day', at(10))).toBe(3);
    expect(workDaysHeld(decisions, 'day', at(6))).toBe(4);
    expect(workDaysHeld(decisions, 'day', at(2))).toBe(0);
  });
});
