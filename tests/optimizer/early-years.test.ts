/**
 * A proof by the first years beside trying every decision: where a random tiny program has a plan, its
 * first years have one too, so that nothing is called impossible by them that is not. No outside source
 * is needed.
 */
import { beforeAll, expect, test } from 'vitest';
import fc from 'fast-check';
import type { Campus } from '#domain/campus.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import type { Solver } from '#mip/solver.js';
import { completePlan } from '#optimizer/allocate/complete-plan.js';
import { provenByEarlyYears, throughEarlyYears } from '#optimizer/resolve/early-years.js';
import { neededYears } from '#optimizer/resolve/needed-years.js';
import { checkPlan } from '#rules/check-plan.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { everyDecision } from '../support/tiny/every-decision.js';
import { promise, siteAYear } from '../support/tiny/promises.js';
import { randomPrograms } from '../support/tiny/random-program.js';
import { tinyCampus, tinyFund } from '../support/tiny/tiny-campus.js';

let solver: Solver;
beforeAll(async () => {
  solver = await loadHighsSolver();
});

function hasPlan(campus: Campus): boolean {
  const charges = campusCharges(campus);
  return everyDecision(campus).some((decisions) => {
    const { plan, shortages } = completePlan(campus, decisions, charges);
    return shortages.length === 0 && checkPlan(campus, plan).length === 0;
  });
}

const proven = (campus: Campus, needed: number) =>
  provenByEarlyYears(
    campus,
    { solver, held: new Map(), seed: 1, shouldStop: () => false },
    { needed, secondsLeft: () => Infinity },
  );

test('a program that has a plan has one of its first years, and is never called impossible by them', () => {
  let looked = 0;
  fc.assert(
    fc.property(randomPrograms, (campus) => {
      if (!hasPlan(campus)) return;
      for (let years = 1; years < campus.calendar.horizonYears; years++) {
        const early = throughEarlyYears(campus, years);
        if (!early) continue;
        looked += 1;
        expect(hasPlan(early), `${years} years`).toBe(true);
        expect(proven(campus, years), `${years} years`).toBe(false);
      }
    }),
    { numRuns: 40 },
  );
  expect(looked).toBeGreaterThan(10);
});

const yearly = (dollars: number, through: number) =>
  tinyCampus({
    funds: [tinyFund('capital', dollars, { carry: 0 })],
    commitments: [promise('yearly', 'binding', siteAYear(2028, through))],
  });

test('what the first years cannot pay is proven by them, whatever comes after', () => {
  const poor = yearly(1_000, 2028);
  expect(neededYears(poor)).toBe(1);
  expect(hasPlan(poor)).toBe(false);
  expect(proven(poor, 1)).toBe(true);
  expect(proven(yearly(100_000, 2028), 1)).toBe(false);
});

test('years are needed up to the last one in which something binding asks for a build', () => {
  const of = (part: Partial<Campus>) => neededYears(tinyCampus(part));
  const all = tinyCampus().calendar.horizonYears;
  const hand = { site: 'A', kind: 'fixed' as const, reason: 'test' };
  expect(of({ commitments: [] })).toBe(0);
  expect(of({ commitments: [promise('yearly', 'intended', siteAYear(2028, 2029))] })).toBe(0);
  expect(of({ commitments: [promise('yearly', 'binding', siteAYear(2028, 2029))] })).toBe(2);
  expect(of({ handPlacements: [{ ...hand, year: fiscalYear(2028) }] })).toBe(1);
  expect(of({ handPlacements: [hand] })).toBe(all);
});
