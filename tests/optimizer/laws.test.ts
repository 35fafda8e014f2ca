/**
 * Laws of the best plan, on random tiny programs that are proven: more money, more hours, a shorter lead and
 * fewer commitments never make it worse, tier by tier; the order of lists, the unit of money and a shift
 * of all years change nothing.
 */
import { beforeAll, expect, test } from 'vitest';
import fc from 'fast-check';
import type { Campus } from '#domain/campus.js';
import type { TierResult } from '#domain/tier.js';
import type { Solver } from '#mip/solver.js';
import type { SolveResult } from '#optimizer/solve/solve-campus.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import { solveHere } from '../support/solve-here.js';
import { randomPrograms } from '../support/tiny/random-program.js';
import { RELAXATIONS } from '../support/tiny/relaxed.js';
import { inSmallMoney, reordered, shifted } from '../support/tiny/restated.js';

/** Of each of the two tests: over 200 programs in all. */
const PROGRAMS = 105;

let solver: Solver;
beforeAll(async () => {
  solver = await loadHighsSolver();
});

const RESTATED: Readonly<Record<string, (campus: Campus) => Campus>> = {
  'another order': reordered,
  'all years 3 later': (campus) => shifted(campus, 3),
  'small money': inSmallMoney,
};

/** The tiers that both solves have, up to benefit. */
function shared(a: SolveResult, b: SolveResult): [TierResult, TierResult][] {
  const names = a.report.tiers.map(({ name }) => name);
  return a.report.tiers.slice(0, names.indexOf('benefit') + 1).flatMap((tier) => {
    const other = b.report.tiers.find(({ name }) => name === tier.name);
    return other ? [[tier, other] as [TierResult, TierResult]] : [];
  });
}

/** How much worse a solve is in the first tier in which the two differ by more than it is held to. */
function worseBy(base: SolveResult, other: SolveResult): number {
  for (const [was, is] of shared(base, other)) {
    const worse = was.sense === 'min' ? is.value - was.value : was.value - is.value;
    if (Math.abs(worse) > was.tolerance + 1e-6) return worse;
  }
  return 0;
}

test(`${PROGRAMS} programs: asking less never makes a plan worse`, { timeout: 600_000 }, () => {
  const law = fc.constantFrom(...Object.keys(RELAXATIONS));
  fc.assert(
    fc.property(randomPrograms, law, (campus, name) => {
      const base = solveHere(campus, solver);
      if (base.report.ending === 'no-plan') return;
      const relaxed = solveHere(RELAXATIONS[name]?.(campus) ?? campus, solver);
      expect(relaxed.report.ending, name).toBe('proven');
      expect(worseBy(base, relaxed), name).toBeLessThanOrEqual(0);
    }),
    { numRuns: PROGRAMS },
  );
});

test(`${PROGRAMS} programs: said otherwise, the answer is the same`, { timeout: 600_000 }, () => {
  const way = fc.constantFrom(...Object.keys(RESTATED));
  fc.assert(
    fc.property(randomPrograms, way, (campus, name) => {
      const base = solveHere(campus, solver);
      const other = solveHere(RESTATED[name]?.(campus) ?? campus, solver);
      expect(other.report.ending, name).toBe(base.report.ending);
      expect(worseBy(base, other), name).toBe(0);
    }),
    { numRuns: PROGRAMS },
  );
});
