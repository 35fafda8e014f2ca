/**
 * Conflict sets and repairs beside enumeration of all subsets, on random monotone verdicts: a set is
 * impossible exactly where it holds one of some planted sets. By definition a smallest conflicting set
 * is an impossible set all of whose smaller ones are possible, and a repair its mirror image.
 */
import { expect, test } from 'vitest';
import fc from 'fast-check';
import { conflictsAmong, Oracle } from '#explain/questions/conflicts/conflict-sets.js';

const MEMBERS = [0, 1, 2, 3, 4, 5];

const planted = fc.array(fc.subarray(MEMBERS, { minLength: 1, maxLength: 4 }), {
  minLength: 1,
  maxLength: 4,
});

const subsets = MEMBERS.reduce<number[][]>(
  (sets, m) => [...sets, ...sets.map((s) => [...s, m])],
  [[]],
);
const within = (a: readonly number[], b: readonly number[]) => a.every((m) => b.includes(m));
const minimal = (sets: readonly number[][]) =>
  sets.filter((s) => !sets.some((other) => other.length < s.length && within(other, s)));
const asText = (sets: readonly (readonly number[])[]) =>
  sets.map((s) => [...s].sort().join(' ')).sort();

test('all smallest sets and all smallest repairs are found, and no other', async () => {
  await fc.assert(
    fc.asyncProperty(planted, async (seeds) => {
      const impossible = (kept: readonly number[]) => seeds.some((s) => within(s, kept));
      let asked = 0;
      const oracle = new Oracle<number>(async (kept) => {
        asked += 1;
        return impossible([...kept]) ? 'impossible' : 'possible';
      });
      const goOn = () => true;
      const { sets, repairs, complete } = await conflictsAmong(MEMBERS, oracle, {
        mostRemoved: 6,
        goOn,
      });
      const removals = subsets.filter((r) => !impossible(MEMBERS.filter((m) => !r.includes(m))));
      expect(complete).toBe(true);
      expect(asText(repairs)).toEqual(asText(minimal(removals)));
      expect(asText(sets.map((s) => s.members))).toEqual(
        asText(minimal(subsets.filter(impossible))),
      );
      expect(sets.every((s) => s.necessary.length === s.members.length)).toBe(true);
      expect(asked).toBeLessThanOrEqual(subsets.length);
    }),
    { numRuns: 200 },
  );
});

test('a member whose removal cannot be judged is kept, and not called necessary', async () => {
  const oracle = new Oracle<string>(async (kept) => {
    if (kept.has('a') && kept.has('b')) return 'impossible';
    return kept.has('a') ? 'unknown' : 'possible';
  });
  const found = await conflictsAmong(['a', 'b'], oracle, { mostRemoved: 2, goOn: () => true });
  expect(found.sets).toEqual([{ members: ['a', 'b'], necessary: ['a'] }]);
  expect(found.repairs).toEqual([['a']]);
  expect(found.complete).toBe(false);
});
