/**
 * Random programs, impossible and degenerate ones among them, solved to the end and compared with trying
 * every decision. RANDOM_PROGRAMS=1000 sets how many; the usual run has fewer, new ones each time.
 */
import { beforeAll, expect, test } from 'vitest';
import fc from 'fast-check';
import type { Solver } from '#mip/solver.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import { solveHere } from '../support/solve-here.js';
import { bestOfAll, expectBest } from '../support/tiny/best-of-all.js';
import { randomPrograms } from '../support/tiny/random-program.js';

const COUNT = Number(process.env['RANDOM_PROGRAMS'] ?? 50);

let solver: Solver;
beforeAll(async () => {
  solver = await loadHighsSolver();
});

test(
  `${COUNT} random programs end as they should, every plan verified`,
  { timeout: 3_600_000 },
  () => {
    const endings = new Map<string, number>();
    fc.assert(
      fc.property(randomPrograms, (campus) => {
        const best = bestOfAll(campus);
        const result = solveHere(campus, solver);
        expectBest(campus, result, best);
        const { ending } = result.report;
        endings.set(ending, (endings.get(ending) ?? 0) + 1);
      }),
      { numRuns: COUNT },
    );
    // Both endings are met, so that neither is only said to be right.
    expect([...endings.keys()].sort()).toEqual(['no-plan', 'proven']);
  },
);
