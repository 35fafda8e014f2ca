/**
 * Plans put together of lives that a search has met, on small generated programs. HiGHS is the second way: among
 * all lives it finds the best plan there is.
 */
import { beforeAll, describe, expect, test } from 'vitest';
import { placementKey, type Decisions } from '#domain/plan.js';
import type { Solver } from '#mip/solver.js';
import { groundOf } from '#optimizer/columns/ground-of.js';
import { construct, RECIPES } from '#optimizer/construct/construct.js';
import { isServed } from '#optimizer/construct/try-life.js';
import { MetLives } from '#optimizer/improve/met-lives.js';
import { ruinAndRecreate, WANDERING } from '#optimizer/improve/ruin-and-recreate.js';
import { decisionsOf } from '#optimizer/search/state.js';
import { tablesOf } from '#optimizer/search/tables.js';
import { restricted } from '#optimizer/solve/restricted.js';
import { relaxTier, solveTier } from '#optimizer/solve/solve-tier.js';
import { tiersOf } from '#optimizer/tiers/tier-list.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import type { Lifecycle } from '#rules/columns.js';
import { seededRandom } from '#units/random.js';
import { SMALL_PROGRAMS, smallCampus, type SmallProgram } from '../support/small-programs.js';

let solver: Solver;
beforeAll(async () => {
  solver = await loadHighsSolver();
});

function programOf(of: SmallProgram) {
  const campus = smallCampus(of);
  const ground = groundOf(campus);
  const tier = tiersOf(campus).find(({ name }) => name === 'benefit');
  const held = new Map([['unserved-total', 0]]);
  const asked = { solver, tier: 'benefit', held, limits: {}, seed: 1, shouldStop: () => false };
  const relaxation = relaxTier({ ...asked, ground });
  const [recipe] = RECIPES;
  const first = recipe && construct(tablesOf(ground), recipe);
  if (!tier || !first || relaxation === null || relaxation === 'infeasible')
    throw new Error('a generated program has no first plan');
  const solved = (of: { ground: typeof ground; start?: Decisions }) =>
    solveTier({ ...asked, ...of, onBound: () => undefined, onDecisions: () => undefined });
  const benefit = ({ placements }: Decisions) => {
    const own = new Set(placements.map(placementKey));
    const taken = ground.lifecycles.filter((l) => own.has(placementKey(l.placement)));
    return taken.reduce((sum, life) => sum + life.benefit, 0);
  };
  return { ground, tier, relaxation, first, solved, benefit };
}

describe.each(SMALL_PROGRAMS)('$name', (of) => {
  test('a plan put together of lives that were met has no others, and is no worse than the plan it began from', () => {
    const { ground, tier, relaxation, first, solved, benefit } = programOf(of);
    const met = new MetLives();
    const served: boolean[] = [];
    let best = decisionsOf(first);
    ruinAndRecreate(first, {
      random: seededRandom(of.seed),
      rounds: 60,
      done: () => false,
      losses: WANDERING,
      onBetter: (state) => (best = decisionsOf(state)),
      onTaken: (state) => {
        met.meet(state);
        served.push(isServed(state));
      },
    });
    const among = met.first(20);
    const own = new Set(best.placements.map(placementKey));
    const few = restricted(ground, {
      ...{ tier, relaxation, among },
      best: { decisions: best, value: -Infinity },
      most: Infinity,
    });
    const isOpen = (life: Lifecycle) => among.has(life) || own.has(placementKey(life.placement));
    expect(few.ground.lifecycles).toEqual(ground.lifecycles.filter(isOpen));
    expect(few.exact).toBe(few.ground.lifecycles.length === ground.lifecycles.length);
    const merged = solved({ ground: few.ground, start: best }).decisions;
    const optimum = solved({ ground }).decisions;
    if (!merged || !optimum) return expect.fail('the program has no plan');
    expect(benefit(merged)).toBeGreaterThanOrEqual(benefit(best) - 1e-6);
    expect(benefit(merged)).toBeLessThanOrEqual(benefit(optimum) + 1e-6);
    expect(served.length).toBeGreaterThan(0);
    expect(served).not.toContain(false);
  });

  test('among the lives of the best plan there is, it is found from another plan', () => {
    const { ground, tier, relaxation, first, solved, benefit } = programOf(of);
    const optimum = solved({ ground }).decisions;
    if (!optimum) return expect.fail('the program has no plan');
    const own = new Set(optimum.placements.map(placementKey));
    const among = new Set(ground.lifecycles.filter((l) => own.has(placementKey(l.placement))));
    const start = decisionsOf(first);
    const few = restricted(ground, {
      ...{ tier, relaxation, among },
      best: { decisions: start, value: -Infinity },
      most: Infinity,
    });
    const merged = solved({ ground: few.ground, start }).decisions;
    expect(merged && benefit(merged)).toBeCloseTo(benefit(optimum), 4);
  });
});

test('lives of better plans come first', () => {
  const [program] = SMALL_PROGRAMS;
  if (!program) return expect.fail('no program');
  const { ground, first } = programOf(program);
  const dearest = Math.max(...Array.from(first.lives, (life) => life.benefit));
  const poor = ground.lifecycles.find((l) => l.benefit < dearest && !first.lives.has(l));
  if (!poor) return expect.fail('no life is worth less');
  const met = new MetLives();
  met.meet({ ...first, lives: new Set([poor]) });
  met.meet(first);
  expect(met.first(first.lives.size)).toEqual(first.lives);
  expect(met.first(Infinity)).toEqual(new Set([...first.lives, poor]));
});
