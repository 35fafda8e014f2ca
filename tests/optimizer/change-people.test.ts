/** People whom a search tries out: only such as may be hired, and everything they change is counted anew. */
import { beforeAll, expect, test } from 'vitest';
import fc from 'fast-check';
import type { Solver } from '#mip/solver.js';
import { groundOf } from '#optimizer/columns/ground-of.js';
import { isServed } from '#optimizer/construct/try-life.js';
import { changePeople, PEOPLE_WAYS } from '#optimizer/improve/change-people.js';
import { applyHire, emptyState, hiresOf, type SearchState } from '#optimizer/search/state.js';
import { staffedStateOf } from '#optimizer/search/state-of.js';
import { tablesOf } from '#optimizer/search/tables.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import { randomBelow, seededRandom } from '#units/random.js';
import { solveHere } from '../support/solve-here.js';
import { GARDENER, randomPrograms } from '../support/tiny/random-program.js';

let solver: Solver;
beforeAll(async () => {
  solver = await loadHighsSolver();
});

const INTERN = { ...GARDENER, id: 'intern', term: 'one-season', most: 2 } as const;

function expectAdmitted(state: SearchState): void {
  const last = state.tables.ground.campus.calendar.horizonYears - 1;
  state.tables.positions.forEach(({ type, firstStart }, position) => {
    const byYear = [...(state.hires[position] ?? [])];
    const total = byYear.reduce((sum, count) => sum + count, 0);
    const most = type.term === 'recurring' ? total : Math.max(...byYear);
    expect(most).toBeLessThanOrEqual(type.most);
    expect(byYear.slice(0, firstStart).every((count) => count === 0)).toBe(true);
    expect(byYear.slice(last + 1).every((count) => count === 0)).toBe(true);
    expect(Math.min(...byYear)).toBeGreaterThanOrEqual(0);
  });
}

function withSameHires(state: SearchState): SearchState {
  const fresh = emptyState(state.tables);
  state.hires.forEach((byYear, position) =>
    byYear.forEach((count, startYear) => {
      if (count > 0) applyHire(fresh, { position, startYear, count });
    }),
  );
  return fresh;
}

test('after any changes nobody is hired too often, too early or too late, and costs and hours are those of the people there are', () => {
  const seen = new Set<number>();
  fc.assert(
    fc.property(randomPrograms, fc.nat(), (campus, seed) => {
      const state = emptyState(tablesOf(groundOf({ ...campus, positions: [GARDENER, INTERN] })));
      const random = seededRandom(seed);
      for (let i = 0; i < 30; i++) {
        changePeople(state, random, PEOPLE_WAYS[randomBelow(random, 3)] ?? 'kept');
        expectAdmitted(state);
        seen.add(hiresOf(state).length);
      }
      const fresh = withSameHires(state);
      expect(state.costs).toEqual(fresh.costs);
      for (const { index } of state.tables.seasonList)
        expect(state.labor.worst(state.needs, index)).toEqual(
          fresh.labor.worst(fresh.needs, index),
        );
    }),
    { numRuns: 60 },
  );
  expect([...seen]).toEqual(expect.arrayContaining([0, 1, 2]));
});

test('the people of a proven plan serve it, and nobody is hired beside them', () => {
  fc.assert(
    fc.property(randomPrograms, (campus) => {
      const { plan } = solveHere(campus, solver);
      if (!plan || plan.unserved.length > 0) return;
      const state = staffedStateOf(tablesOf(groundOf(campus)), plan.decisions);
      expect(isServed(state)).toBe(true);
      expect(hiresOf(state)).toEqual(plan.decisions.hires);
    }),
    { numRuns: 15 },
  );
});
