/** What a search remembers of the hours that seasons have to spare: never more than there are. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { groundOf } from '#optimizer/columns/ground-of.js';
import { hireForGaps } from '#optimizer/search/hire-for-gaps.js';
import { applyHire, applyLife, emptyState, type SearchState } from '#optimizer/search/state.js';
import { tablesOf } from '#optimizer/search/tables.js';
import { randomPrograms } from '../support/tiny/random-program.js';

function expectNoMoreThanThereIs(state: SearchState): void {
  for (const { index } of state.tables.seasonList) {
    const room = state.room[index] ?? -1;
    if (room >= 0)
      expect(-state.labor.worst(state.needs, index).hours).toBeGreaterThanOrEqual(room);
  }
}

test('after any moves, no season is thought to have more hours to spare than it has', () => {
  fc.assert(
    fc.property(
      randomPrograms,
      fc.array(fc.nat(400), { minLength: 4, maxLength: 40 }),
      (campus, moves) => {
        const tables = tablesOf(groundOf(campus));
        const { lifecycles } = tables.ground;
        const state = emptyState(tables);
        for (const move of moves) {
          const life = lifecycles[move % Math.max(1, lifecycles.length)];
          if (life) applyLife(state, life, state.lives.has(life) ? -1 : 1);
          if (move % 3 === 0) hireForGaps(state);
          if (move % 5 === 0) takeOneOff(state);
          expectNoMoreThanThereIs(state);
        }
      },
    ),
    { numRuns: 60 },
  );
});

function takeOneOff(state: SearchState): void {
  state.hires.forEach((byYear, position) => {
    const startYear = byYear.findIndex((count) => count > 0);
    if (startYear >= 0) applyHire(state, { position, startYear, count: -1 });
  });
}
