/** Ways of a search: what gained is chosen more often, and nothing is given up for good. */
import { describe, expect, test } from 'vitest';
import { Ways } from '#optimizer/improve/ways.js';
import { seededRandom } from '#units/random.js';

function chosen(rewarded: string | undefined, rounds: number): Record<string, number> {
  const ways = new Ways(['stay', 'anew', 'change'], seededRandom(3));
  const counts: Record<string, number> = { stay: 0, anew: 0, change: 0 };
  for (let round = 0; round < rounds; round++) {
    const way = ways.next();
    counts[way] = (counts[way] ?? 0) + 1;
    if (way === rewarded) ways.reward(way);
  }
  return counts;
}

describe('ways', () => {
  test('where none gains, all are chosen about as often', () => {
    const counts = Object.values(chosen(undefined, 3000));
    expect(Math.min(...counts)).toBeGreaterThan(800);
  });

  test.each(['stay', 'anew', 'change'])(
    '%s is chosen most where it alone gains, and the others now and then',
    (way) => {
      const { [way]: own = 0, ...others } = chosen(way, 3000);
      expect(own).toBeGreaterThan(2000);
      for (const count of Object.values(others)) expect(count).toBeGreaterThan(200);
    },
  );
});
