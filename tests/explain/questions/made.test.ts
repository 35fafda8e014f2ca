/** How an answer tells the work behind it. No outside source is needed: the rounds are given. */
import { expect, test } from 'vitest';
import type { Plan } from '#domain/plan.js';
import type { Asked } from '#explain/questions/common/asked.js';
import type { Contestant } from '#explain/questions/next-site/contest.js';
import { madeOf } from '#explain/questions/next-site/made.js';
import { choose } from '#explain/questions/next-site/choices.js';
import { tinyCampus } from '../../support/tiny/tiny-campus.js';

const decisions = { placements: [], hires: [], workDays: [], purchases: [] };
const plan: Plan = { decisions, labor: [], unserved: [], spending: [], compost: [] };

function sentence(...rounds: readonly number[]): string {
  const contestants = rounds.map((each): Contestant => ({
    ...{ choice: choose(tinyCampus(), []), ending: 'found', plan, rounds: each },
    ...{ stages: [[{ decisions, values: [] }]], reached: { values: [], bounds: [] } },
  }));
  const alsoTry = () => Promise.resolve([]);
  const contested = { contestants, noise: [], alsoTry, relaxationSeconds: 0, isProven: false };
  return madeOf({ seed: 1 } as Asked, contested, []).sentence;
}

test('rounds are told where there were any, and that there were none where there were none', () => {
  expect(sentence(12, 12)).toContain('searched on with 12 rounds.');
  expect(sentence(12, 40)).toContain('searched on with at least 12 rounds.');
  expect(sentence(0, 40)).toContain(
    'for some of them no re-planning was finished in the time, others got up to 40 rounds of search.',
  );
  expect(sentence(0, 0)).toContain('and no re-planning was finished in the time.');
  for (const rounds of [
    [0, 0],
    [0, 40],
  ])
    expect(sentence(...rounds)).not.toMatch(/\b0 rounds/);
});
