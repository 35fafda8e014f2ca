/** Hours that a plan asks for, worked out by hand from the tiny campus. */
import { describe, expect, test } from 'vitest';
import type { WorkDay } from '#domain/labor.js';
import { NO_DECISIONS, type Placement } from '#domain/plan.js';
import { laborNeeds } from '#estimating/plan-needs/labor-needs.js';
import { centiHours } from '#units/centihours.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { tinyCampus, tinySite } from '../support/tiny/tiny-campus.js';

const campus = tinyCampus();
const beds: Placement = { site: 'A', buildType: 'beds', year: fiscalYear(2028) };
const planting = (placement: Placement) => ({ ...NO_DECISIONS, placements: [placement] });

describe('Hours of a site of 5,000 sf, half of it bed', () => {
  const bedNeeds = () => laborNeeds(campus, planting(beds));
  const within = (hours: number) => [Math.floor(hours * 100), Math.ceil(hours * 100) + 1] as const;

  test('are 30 h per 1,000 sf to prepare in fall, 10 to plant in spring', () => {
    const needs = bedNeeds();
    expect(needs).toHaveLength(32);
    expect(needs.map((n) => n.prepare).flatMap((h, i) => (h > 0 ? [[i, h]] : []))).toEqual([
      [1, 150_00],
    ]);
    expect(needs.map((n) => n.plant).flatMap((h, i) => (h > 0 ? [[i, h]] : []))).toEqual([
      [3, 50_00],
    ]);
  });

  test('fall from 60 towards 30 h per 1,000 sf of bed as e^-0.7 a year, season by season', () => {
    const needs = bedNeeds();
    const level = (age: number) => 30 + 30 * Math.exp(-0.7 * (age - 1));
    expect(needs[2]?.['care-other']).toBe(0);
    expect(needs[3]?.['care-other']).toBe(2.5 * 60 * 0.3 * 100);
    expect(needs[4]?.['care-other']).toBe(2.5 * 60 * 0.4 * 100);
    for (const [index, share, age] of [
      [7, 0.3, 2],
      [8, 0.4, 2],
      [10, 0.1, 2],
      [31, 0.3, 8],
    ] as const) {
      const [least, most] = within(2.5 * level(age) * share);
      expect(needs[index]?.['care-other']).toBeGreaterThanOrEqual(least);
      expect(needs[index]?.['care-other']).toBeLessThanOrEqual(most);
    }
    expect(needs.every((n) => n['care-food'] === 0 && n.harvest === 0)).toBe(true);
  });

  test('of trees and shrubs are food care, and harvest once they bear', () => {
    const food = laborNeeds(campus, planting({ ...beds, buildType: 'fruit' }));
    expect(food[4]?.['care-food']).toBe(2.5 * 60 * 0.4 * 100);
    expect(food[4]?.['care-other']).toBe(0);
    // 10 h of a full crop per 1,000 sf, half of it in summer: none at age 1, half at 2, all from 3 on.
    expect([4, 8, 12, 16, 10].map((index) => food[index]?.harvest)).toEqual([
      0, 6_25, 12_50, 12_50, 0,
    ]);
  });

  test('count from planting where the site stands already', () => {
    const { costFactor: _, buildTypes: __, notes: ___, ...ground } = tinySite('OLD');
    const old = laborNeeds(
      tinyCampus({
        existing: [{ ...ground, stage: 'existing', buildType: 'beds', plantedYear: 2026 }],
      }),
      NO_DECISIONS,
    );
    // Age 2 until the third spring, which is at index 3.
    const [least, most] = within(2.5 * (30 + 30 * Math.exp(-0.7)) * 0.4);
    expect(old[0]?.['care-other']).toBeGreaterThanOrEqual(least);
    expect(old[0]?.['care-other']).toBeLessThanOrEqual(most);
    expect(old.every((n) => n.prepare === 0 && n.plant === 0)).toBe(true);
  });
});

test('leading work days takes hours in their own season and year', () => {
  const day: WorkDay = {
    id: 'spring-day',
    name: 'Spring day',
    season: 'spring',
    mostPerSeason: 4,
    hoursEach: centiHours(80_00),
    leaderHoursEach: centiHours(12_00),
    tasks: ['plant'],
    peoplePresent: 40,
    leaders: 4,
    provenance: { basis: 'judgement', source: 'invented for a test' },
  };
  const workDays = [
    { workDay: 'spring-day', year: fiscalYear(2029), count: 2 },
    { workDay: 'spring-day', year: fiscalYear(2030), count: 1 },
  ];
  const needs = laborNeeds(tinyCampus({ workDays: [day] }), { ...NO_DECISIONS, workDays });
  expect(needs.map((n) => n.supervise).flatMap((h, i) => (h > 0 ? [[i, h]] : []))).toEqual([
    [7, 24_00],
    [11, 12_00],
  ]);
});
