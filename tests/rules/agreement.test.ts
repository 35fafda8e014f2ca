/**
 * Each rule is told twice: as rows for the solver and as a check of a finished plan. Here every
 * decision of a tiny campus is judged both ways; no outside source is needed, since the two must
 * agree whatever the numbers are.
 */
import { beforeAll, describe, expect, test } from 'vitest';
import type { Campus } from '#domain/campus.js';
import type { Solver } from '#mip/solver.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import { centiHours } from '#units/centihours.js';
import { cents } from '#units/cents.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { agree as agreeWith, expectBinding } from '../support/tiny/agree.js';
import type { Reach } from '../support/tiny/every-decision.js';
import { tinyCampus, tinyFund, tinyPool, tinySite } from '../support/tiny/tiny-campus.js';

let solver: Solver;
beforeAll(async () => {
  solver = await loadHighsSolver();
});

const agree = (campus: Campus, reach: Reach = {}) => agreeWith(solver, campus, reach);
const oneSite = [tinySite('A')];

describe('rows and checks agree on every decision of a tiny campus', () => {
  test('built once, with ample means: every placement passes', () => {
    expect(agree(tinyCampus())).toEqual({ passing: 49, of: 49 });
  });

  test('eligible years: windows, types and gates', () => {
    const gate = {
      kind: 'contamination' as const,
      status: 'unknown' as const,
      note: 'no test',
      bars: 'edible' as const,
      clearedBy: 'a soil test',
      plannedClearFrom: fiscalYear(2029),
    };
    expectBinding(
      agree(
        tinyCampus({
          candidates: [
            tinySite('A', { gates: [gate], latest: fiscalYear(2029) }),
            tinySite('B', { buildTypes: ['beds'], earliest: fiscalYear(2029) }),
          ],
        }),
      ),
    );
  });

  test('a failed gate bars for good', () => {
    const gate = {
      kind: 'utilities' as const,
      status: 'fail' as const,
      note: 'gas main',
      bars: 'all' as const,
      clearedBy: 'nothing',
    };
    expect(agree(tinyCampus({ candidates: [tinySite('A', { gates: [gate] })] }))).toEqual({
      passing: 1,
      of: 7,
    });
  });

  test('construction: works bar while they last, sure ones before them as well', () => {
    const works = {
      id: 'w',
      name: 'Tunnel',
      kind: 'footprint',
      sites: ['A'],
      from: fiscalYear(2029),
      to: fiscalYear(2029),
      source: 'a test',
    };
    const certain = agree(
      tinyCampus({ candidates: oneSite, construction: [{ ...works, certaintyPercent: 70 }] }),
    );
    expect(certain).toEqual({ passing: 3, of: 7 });
    const unsure = agree(
      tinyCampus({ candidates: oneSite, construction: [{ ...works, certaintyPercent: 50 }] }),
    );
    expect(unsure).toEqual({ passing: 5, of: 7 });
  });

  test('hand placements: fixed and forbidden', () => {
    const hand = { site: 'A', year: fiscalYear(2029), reason: 'a test' };
    const fixed = agree(tinyCampus({ handPlacements: [{ ...hand, kind: 'fixed' }] }));
    expect(fixed).toEqual({ passing: 14, of: 49 });
    const forbidden = agree(tinyCampus({ handPlacements: [{ ...hand, kind: 'forbidden' }] }));
    expect(forbidden).toEqual({ passing: 35, of: 49 });
  });

  test('precedence and exclusive groups', () => {
    expectBinding(
      agree(
        tinyCampus({
          precedence: [{ before: 'A', after: 'B', yearsApart: 1, reason: 'water main' }],
        }),
      ),
    );
    expect(
      agree(
        tinyCampus({ exclusiveGroups: [{ id: 'g', sites: ['A', 'B'], reason: 'same ground' }] }),
      ),
    ).toEqual({ passing: 13, of: 49 });
  });

  test('labor: pools with different tasks, in the season that binds', () => {
    expectBinding(
      agree(
        tinyCampus({
          pools: [
            tinyPool('crew', 60, ['care-food', 'care-other', 'plant']),
            tinyPool('pickers', 20, ['harvest', 'care-food']),
            tinyPool('builders', 160, ['prepare']),
          ],
        }),
      ),
    );
  });

  test('labor: a supply that lies on the knife edge, and a hundredth below it', () => {
    const edge = (hours: number) =>
      agree(
        tinyCampus({
          candidates: oneSite,
          pools: [
            tinyPool('crew', 1000, ['plant', 'care-food', 'care-other', 'harvest', 'supervise']),
            tinyPool('builders', hours, ['prepare']),
          ],
        }),
      );
    expect(edge(150)).toEqual({ passing: 7, of: 7 });
    expect(edge(149.99)).toEqual({ passing: 1, of: 7 });
  });

  test('positions: lead time, number, and the hours they bring', () => {
    const position = {
      id: 'gardener',
      name: 'Gardener',
      term: 'recurring' as const,
      tasks: ['care-food', 'care-other', 'harvest', 'plant'] as const,
      startSeason: 'fall',
      leadMonths: 20,
      hours: {
        summer: centiHours(100_00),
        fall: centiHours(100_00),
        winter: centiHours(50_00),
        spring: centiHours(100_00),
      },
      firstYearHours: {
        fall: centiHours(50_00),
        winter: centiHours(50_00),
        spring: centiHours(80_00),
      },
      annualCost: cents(60_000_00),
      firstYearCost: cents(45_000_00),
      oneTimeCost: cents(5_000_00),
      most: 1,
      provenance: { basis: 'judgement' as const, source: 'a test' },
    };
    expectBinding(
      agree(
        tinyCampus({
          candidates: oneSite,
          positions: [position],
          pools: [
            tinyPool('crew', 40, ['care-food', 'care-other', 'harvest', 'plant']),
            tinyPool('builders', 200, ['prepare']),
          ],
          funds: [tinyFund('capital', 70_000, { carry: 2 })],
        }),
      ),
    );
  });

  test('work days: their leaders are found among those who may lead', () => {
    const day = {
      id: 'fall-day',
      name: 'Fall work day',
      season: 'fall',
      mostPerSeason: 2,
      hoursEach: centiHours(60_00),
      leaderHoursEach: centiHours(12_00),
      tasks: ['prepare'] as const,
      peoplePresent: 34,
      leaders: 4,
      provenance: { basis: 'judgement' as const, source: 'a test' },
    };
    const campus = (leaders: number) =>
      agree(
        tinyCampus({
          candidates: oneSite,
          workDays: [day],
          pools: [
            tinyPool('crew', 30, ['prepare', 'plant', 'care-food', 'care-other', 'harvest']),
            tinyPool('crew-2', 200, ['plant', 'care-food', 'care-other', 'harvest']),
            tinyPool('lead', leaders, ['supervise']),
          ],
        }),
      );
    expect(campus(24)).toEqual({ passing: 7, of: 7 });
    expect(campus(23.99)).toEqual({ passing: 0, of: 7 });
  });
});
