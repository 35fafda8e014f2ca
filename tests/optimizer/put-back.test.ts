/**
 * A search that puts a state back. A plan of the solver may be served by people whom the search's own
 * hiring does not find; made extreme here, by a crew that cannot serve the plan at all.
 */
import { expect, test } from 'vitest';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { everyLifecycle } from '#optimizer/columns/lifecycles.js';
import { isServed } from '#optimizer/construct/try-life.js';
import { ruinAndRecreate } from '#optimizer/improve/ruin-and-recreate.js';
import { Checkpoint } from '#optimizer/search/checkpoint.js';
import { applyHire, applyLife, emptyState, type SearchState } from '#optimizer/search/state.js';
import { tablesOf } from '#optimizer/search/tables.js';
import { seededRandom } from '#units/random.js';
import { GARDENER } from '../support/tiny/random-program.js';
import { tinyCampus, tinyPool, tinySite } from '../support/tiny/tiny-campus.js';

function unservedState(): SearchState {
  const campus = tinyCampus({
    candidates: [tinySite('A'), tinySite('B'), tinySite('C')],
    pools: [tinyPool('crew', 1)],
    positions: [GARDENER],
  });
  const charges = campusCharges(campus);
  const lifecycles = everyLifecycle(campus, charges);
  const state = emptyState(tablesOf({ campus, charges, lifecycles }));
  for (const site of ['A', 'B', 'C']) {
    const life = lifecycles.find((l) => l.site === site);
    if (life) applyLife(state, life, 1);
  }
  return state;
}

const kept = (state: SearchState) => ({
  lives: new Set(state.lives),
  needs: Float64Array.from(state.needs),
  costs: Float64Array.from(state.costs),
  hires: state.hires.map((byYear) => Int32Array.from(byYear)),
});

test('lives, hours, costs and people come back as they were', () => {
  const state = unservedState();
  applyHire(state, { position: 0, startYear: 1, count: 1 });
  const before = kept(state);
  const checkpoint = new Checkpoint(state);
  const [life] = state.lives;
  if (life) {
    applyLife(state, life, -1);
    checkpoint.removed.push(life);
  }
  applyHire(state, { position: 0, startYear: 1, count: -1 });
  applyHire(state, { position: 0, startYear: 2, count: 1 });
  checkpoint.putBack();
  expect(kept(state)).toEqual(before);
});

test('a search from a plan that its own hiring cannot serve ends with that plan, and tells none that is not served', () => {
  const state = unservedState();
  expect(isServed(unservedState())).toBe(false);
  const lives = new Set(state.lives);
  const told: boolean[] = [];
  ruinAndRecreate(state, {
    random: seededRandom(1),
    rounds: 40,
    done: () => false,
    onBetter: (better) => told.push(isServed(better)),
  });
  expect(told).toEqual([]);
  expect(state.lives).toEqual(lives);
});
