import { expect } from 'vitest';
import type { Campus } from '#domain/campus.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import type { Solver } from '#mip/solver.js';
import { completePlan } from '#optimizer/allocate/complete-plan.js';
import { checkPlan } from '#rules/check-plan.js';
import { everyDecision, type Reach } from './every-decision.js';
import { hardModel, rowsHold } from './rows-hold.js';

export interface Agreement {
  readonly passing: number;
  readonly of: number;
}

/** Judges every decision by rows and by checks, fails where they differ, and counts what passes. */
export function agree(solver: Solver, campus: Campus, reach: Reach = {}): Agreement {
  const charges = campusCharges(campus);
  const model = hardModel(campus);
  let passing = 0;
  const all = everyDecision(campus, reach);
  for (const decisions of all) {
    const { plan } = completePlan(campus, decisions, charges);
    const breaches = checkPlan(campus, plan).map((b) => b.message);
    const passes = plan.unserved.length === 0 && breaches.length === 0;
    const holds = rowsHold(solver, model, decisions);
    if (holds !== passes) {
      const found = `rows ${holds ? 'hold' : 'break'}, checks ${passes ? 'pass' : 'fail'}`;
      expect.fail(`${found}: ${JSON.stringify(decisions)} ${breaches.join('; ')}`);
    }
    if (passes) passing += 1;
  }
  return { passing, of: all.length };
}

/** Some decisions pass and some do not, so the rule under test binds. */
export function expectBinding(result: Agreement): void {
  expect(result.passing).toBeGreaterThan(0);
  expect(result.passing).toBeLessThan(result.of);
}
