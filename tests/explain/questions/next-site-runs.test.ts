/**
 * Two runs of the question about next year's site, on tiny campuses drawn at random, searched with little
 * work and not solved until proven. The outside answer is brute force: the best of all decisions by the
 * sites of the first year, tier by tier. What either run says must hold there, so that two runs can never
 * contradict each other, and those that it cannot tell from the best must hold the truly best one.
 */
import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import type { Campus } from '#domain/campus.js';
import type { ChoiceRow, NextSiteAnswer } from '#explain/questions/next-site/answer.js';
import { nextSite } from '#explain/questions/next-site/next-site.js';
import type { Asked } from '#explain/questions/common/asked.js';
import type { Solver } from '#mip/solver.js';
import { tiersOf } from '#optimizer/tiers/tier-list.js';
import { compareTiers } from '#optimizer/tiers/tier-values.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import { askedOf } from '../../support/explain/asked-of.js';
import { bestByFirstYear } from '../../support/explain/best-by-first-year.js';
import { promise, siteAYear } from '../../support/tiny/promises.js';
import { tinyCampus, tinyFund, tinySite } from '../../support/tiny/tiny-campus.js';

let solver: Solver;
beforeAll(async () => {
  solver = await loadHighsSolver();
});

interface Draw {
  readonly sites: readonly { readonly walkersPerDay: number; readonly areaSqFt: number }[];
  readonly dollars: number;
  readonly carry: number;
}

const draws: fc.Arbitrary<Draw> = fc.record({
  sites: fc.array(
    fc.record({
      walkersPerDay: fc.integer({ min: 0, max: 3000 }),
      areaSqFt: fc.integer({ min: 2000, max: 5000 }),
    }),
    { minLength: 2, maxLength: 4 },
  ),
  dollars: fc.integer({ min: 15_000, max: 60_000 }),
  carry: fc.integer({ min: 0, max: 1 }),
});

function campusOf({ sites, dollars, carry }: Draw): Campus {
  const candidates = sites.map(({ walkersPerDay, areaSqFt }, i) => {
    const id = 'ABCD'.charAt(i);
    const facts = { ...tinySite(id).facts, walkersPerDay: { known: true, value: walkersPerDay } };
    return tinySite(id, { areaSqFt, buildTypes: ['beds'], facts: facts });
  });
  return tinyCampus({
    candidates,
    funds: [tinyFund('capital', dollars, { carry })],
    calendar: { ...tinyCampus().calendar, horizonYears: 2 },
    commitments: [promise('yearly', 'intended', siteAYear(2028, 2029))],
  });
}

interface Run {
  readonly seed: number;
  readonly rounds: number;
}

const runs: fc.Arbitrary<Run> = fc.record({
  seed: fc.integer({ min: 1, max: 10_000 }),
  rounds: fc.integer({ min: 4, max: 40 }),
});

const ask = (asked: Asked, { seed, rounds }: Run) =>
  nextSite({ ...asked, seed, effort: { kind: 'rounds', rounds } });

test('the same seed and work give the same answer, and two runs never contradict each other', async () => {
  await fc.assert(
    fc.asyncProperty(draws, runs, runs, async (draw, first, second) => {
      const campus = campusOf(draw);
      const asked = askedOf(campus, solver);
      const one = await ask(asked, first);
      expect(JSON.stringify(await ask(asked, first))).toBe(JSON.stringify(one));
      const other = await ask(asked, second);
      const exact = bestByFirstYear(campus);
      for (const answer of [one, other]) {
        holdsTheBest(campus, answer, exact);
        for (const row of answer.choices) isTrue({ campus, answer, exact }, row);
      }
      overlap(one, other);
    }),
    { numRuns: 12, endOnFailure: true },
  );
}, 120_000);

type Exact = ReadonlyMap<string, readonly number[]>;

/** Some choice that is as good as any stands among those that the answer could not tell apart. */
function holdsTheBest(campus: Campus, { choices }: NextSiteAnswer, exact: Exact): void {
  const valuesOf = (rows: readonly ChoiceRow[]) =>
    rows
      .flatMap((c) => [exact.get(c.sites.join('+')) ?? []])
      .filter((values) => values.length > 0)
      .sort((a, b) => compareTiers(campus, a, b));
  const [best = []] = valuesOf(choices);
  const [leading = []] = valuesOf(
    choices.filter((c) => ['recommended', 'tied'].includes(c.standing)),
  );
  expect(best.length).toBeGreaterThan(0);
  expect(leading.length).toBeGreaterThan(0);
  expect(compareTiers(campus, leading, best)).toBe(0);
}

/** The interval of a regret holds what brute force says, and a proven word is true. */
function isTrue(
  of: { readonly campus: Campus; readonly answer: NextSiteAnswer; readonly exact: Exact },
  row: ChoiceRow,
): void {
  const { campus, answer, exact } = of;
  const own = exact.get(row.sites.join('+'));
  if (row.standing === 'impossible') expect(own).toBeUndefined();
  const rival = answer.choices.find((c) => c.id === row.comparedWith);
  const theirs = rival && exact.get(rival.sites.join('+'));
  if (!row.regret || !own || !theirs || row.regret.given.length > 0) return;
  const place = tiersOf(campus).findIndex((t) => t.name === row.regret?.tier);
  const sign = tiersOf(campus)[place]?.sense === 'max' ? 1 : -1;
  const due = sign * ((theirs[place] ?? 0) - (own[place] ?? 0));
  expect(row.regret.least).toBeLessThanOrEqual(Math.max(0, due) + 1e-3);
  expect(row.regret.most ?? Infinity).toBeGreaterThanOrEqual(due - 1e-3);
  if (row.standing === 'worse') expect(compareTiers(campus, theirs, own)).toBeLessThan(0);
}

/** Where two runs compare the same two choices in the same aim, their intervals of regret overlap. */
function overlap(one: NextSiteAnswer, other: NextSiteAnswer): void {
  for (const { id, comparedWith, regret } of one.choices) {
    const same = other.choices.find((c) => c.id === id && c.comparedWith === comparedWith);
    if (!regret || !same?.regret || regret.tier !== same.regret.tier) continue;
    expect(regret.least).toBeLessThanOrEqual((same.regret.most ?? Infinity) + 1e-3);
    expect(same.regret.least).toBeLessThanOrEqual((regret.most ?? Infinity) + 1e-3);
  }
}
