/**
 * Bounds by counts, on small generated programs, against a solver that branches on sites and years: no bound
 * and no limit may cut off a plan that is better than the one at hand. Held against HiGHS as a second
 * way; that its optimum is right is held against trying every decision in random-programs.test.ts.
 */
import { beforeAll, expect, test } from 'vitest';
import type { Campus } from '#domain/campus.js';
import type { Solver } from '#mip/solver.js';
import { groundOf } from '#optimizer/columns/ground-of.js';
import { proveByCounts } from '#optimizer/counts/prove-by-counts.js';
import { planModel } from '#optimizer/model/plan-model.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import { parseCampusFile } from '#contracts/parse-campus-file.js';
import { generatedFile } from '../bench/programs/generated-program.js';
import { KINDS } from '../bench/programs/shape.js';

let solver: Solver;
beforeAll(async () => {
  solver = await loadHighsSolver();
});

const held = new Map([['unserved-total', 0]]);

const programs = KINDS.flatMap((kind) =>
  [1, 2].map((seed) => ({ name: `${kind} program ${seed}`, kind, seed })),
);

function campusOf({ kind, seed }: (typeof programs)[number]): Campus {
  const file = generatedFile({ sites: 6, years: 6, kind, seed });
  const parsed = parseCampusFile(JSON.stringify(file));
  if (!parsed.ok) throw new Error('a generated program is not sound');
  return parsed.campus;
}

/** The best benefit, as the solver finds it; with one life taken up for certain. */
function best(campus: Campus, life?: number): { worth: number; begun: number[] } | undefined {
  const { model, columns } = planModel(groundOf(campus), 'benefit', held);
  const column = life === undefined ? undefined : columns.lifecycles[life]?.variable.column;
  const lower = model.lower.map((v, j) => (j === column ? 1 : v));
  const found = solver.solve({ ...model, lower }, { limits: {}, seed: 1 });
  if (found.kind !== 'optimal') return undefined;
  const taken = columns.lifecycles.filter((l) => (found.values[l.variable.column] ?? 0) > 0.5);
  return { worth: found.objective, begun: taken.map((l) => l.yearIndex) };
}

function proof(campus: Campus, worth: number, nodes: number) {
  return proveByCounts({
    ...{ ground: groundOf(campus), solver, tier: 'benefit', held, seed: 1, nodes },
    worth: () => worth,
    onBound: () => undefined,
    onWhole: () => undefined,
    shouldStop: () => false,
    secondsLeft: () => 1000,
  });
}

const near = (value: number) => 1e-5 * Math.max(1, Math.abs(value));

test.each(programs)('$name: no better plan is cut off, and the whole tree closes the gap', (of) => {
  const campus = campusOf(of);
  const optimum = best(campus);
  if (!optimum) return expect.fail('the program has no plan');
  for (const [share, nodes] of [
    [0.5, 1],
    [0.9, 4],
    [0.98, 400],
  ] as const) {
    const found = proof(campus, optimum.worth * share, nodes);
    if (found === 'nothing-better') return expect.fail(`a plan worth ${optimum.worth} is cut off`);
    expect(found.bound).toBeGreaterThanOrEqual(optimum.worth - near(optimum.worth));
    if (nodes === 400) expect(found.bound).toBeLessThanOrEqual(optimum.worth + near(optimum.worth));
    for (const [key, most] of found.limits) {
      const year = Number(/^begun (\d+)$/.exec(key)?.[1]);
      const begun = optimum.begun.filter((y) => y <= year).length;
      expect(begun, key).toBeLessThanOrEqual(most);
    }
  }
});

test.each(programs)(
  '$name: what a plan with a life may reach is no less than the best has',
  (of) => {
    const campus = campusOf(of);
    const worth = 0.5 * (best(campus)?.worth ?? 0);
    const found = proof(campus, worth, 3);
    if (found === 'nothing-better') return expect.fail('a plan is cut off');
    const lives = [...found.withLife.keys()].filter((l) => l % 23 === of.seed);
    const reached = lives.map((l) => ({
      with: found.withLife[l],
      own: best(campus, l)?.worth ?? 0,
    }));
    const judged = reached.filter(({ own }) => own > worth);
    expect(judged.length).toBeGreaterThan(0);
    for (const { with: most, own } of judged) expect(most).toBeGreaterThanOrEqual(own - near(own));
  },
);

test.each(programs)('$name: with the best plan in hand, none is found that is better', (of) => {
  const campus = campusOf(of);
  const worth = best(campus)?.worth ?? 0;
  const found = proof(campus, worth, 400);
  if (found !== 'nothing-better') expect(found.bound).toBeLessThanOrEqual(worth + near(worth));
});
