/**
 * Where a choice stands, by values made up for the test: what falls behind by no more than searches of one
 * choice differ is not called worse, and is not put in order by benefit. No outside source is needed: these
 * are the rules of comparison themselves.
 */
import { expect, test } from 'vitest';
import { choose } from '#explain/questions/next-site/choices.js';
import type { ChoiceRow } from '#explain/questions/next-site/answer.js';
import type { Contestant } from '#explain/questions/next-site/contest.js';
import { inOrder } from '#explain/questions/next-site/order.js';
import { isNear, standsAgainst, type Compared } from '#explain/questions/next-site/standing.js';
import type { Plan } from '#domain/plan.js';
import { promise, siteAYear } from '../../support/tiny/promises.js';
import { tinyCampus } from '../../support/tiny/tiny-campus.js';

const campus = tinyCampus({
  commitments: [promise('yearly', 'intended', siteAYear(2028, 2030))],
});

const decisions = { placements: [], hires: [], workDays: [], purchases: [] };
const plan: Plan = { decisions, labor: [], unserved: [], spending: [], compost: [] };

/** Tiers: care undone at its worst, in all, sites of the promise missing, benefit, yearly cost. */
const values = (missing: number, benefit: number) => [0, 0, missing, benefit, 0];

/** A choice with what its seeds reached in its last stage: sites missing and benefit. */
function contestant(id: string, ...runs: readonly (readonly [number, number])[]): Contestant {
  const reached = runs.map(([missing, benefit]) => values(missing, benefit));
  const [best = []] = [...reached].sort(
    (a, b) => (a[2] ?? 0) - (b[2] ?? 0) || (b[3] ?? 0) - (a[3] ?? 0),
  );
  return {
    choice: { ...choose(campus, []), id, sites: [id] },
    ending: 'found',
    stages: [reached.map((v) => ({ decisions, values: v }))],
    rounds: 10,
    plan,
    reached: { values: best, bounds: best.map(() => null) },
  };
}

const NO_NOISE = [0, 0, 0, 0, 0];
const compared = (all: readonly Contestant[], noise = NO_NOISE): Compared => ({
  campus: { ...campus, candidates: [] },
  all,
  noise,
});
const named = (of: Contestant): Contestant => ({ ...of, choice: { ...of.choice, sites: [] } });

test('worse with every seed by more than seeds differ is found worse; by less it is tied', () => {
  const best = named(contestant('best', [0, 1000], [0, 998]));
  const near = named(contestant('near', [0, 999], [0, 997]));
  const far = named(contestant('far', [0, 990], [0, 988]));
  const of = compared([best, near, far]);
  expect(standsAgainst(of, best).standing).toBe('recommended');
  expect(standsAgainst(of, near)).toMatchObject({ standing: 'tied', seedsWorse: 2, seedsRun: 2 });
  expect(standsAgainst(of, far)).toMatchObject({ standing: 'found-worse', comparedWith: 'best' });
});

test('a site of the promise missed by chance is told apart by benefit, beside those that miss it too', () => {
  const lucky = named(contestant('lucky', [0, 900], [0, 899]));
  const good = named(contestant('good', [1, 1000], [1, 999]));
  const poor = named(contestant('poor', [1, 950], [1, 949]));
  const chance = compared([lucky, good, poor], [0, 0, 1, 0, 0]);
  expect(standsAgainst(chance, good).standing).toBe('tied');
  const stands = standsAgainst(chance, poor);
  expect(stands).toMatchObject({ standing: 'found-worse', comparedWith: 'good' });
  expect(stands.regret).toMatchObject({ tier: 'benefit', found: 50 });
  const sure = compared([lucky, good, poor]);
  expect(standsAgainst(sure, good).standing).toBe('found-worse');
  expect(standsAgainst(sure, poor).regret?.tier).toBe('commitment:yearly');
});

test('a choice is worth more seeds where it is near the best of those equal to it before benefit', () => {
  const lucky = named(contestant('lucky', [0, 900]));
  const good = named(contestant('good', [1, 1000]));
  const poor = named(contestant('poor', [1, 950]));
  const of = compared([lucky, good, poor], [0, 0, 1, 0, 0]);
  expect([lucky, good, poor].map((c) => isNear(of, c))).toEqual([true, true, false]);
});

const row = (id: string, of: Partial<ChoiceRow>): ChoiceRow => ({
  ...{ id, name: id, sites: [id], buildTypes: [], standing: 'tied', sentence: '', regret: null },
  ...{ comparedWith: null, rounds: 1, seedsWorse: 0, seedsRun: 1, firstLimit: null, cost: null },
  ...{ firstLimitMovesYears: null, busySeason: 'summer', busySeasonHours: 100, giftsUsed: [] },
  ...{ giftsLost: [], openGates: [], reasons: [], against: [], ...of },
});

test('of those tied the one is recommended with which least given money lapses, then least care is added', () => {
  const lapse = [{ fund: 'gift', name: 'Gift', dollars: 5000 }];
  const rows = inOrder([
    row('best', { standing: 'recommended', giftsLost: lapse, busySeasonHours: 10 }),
    row('heavy', { busySeasonHours: 200 }),
    row('light', { busySeasonHours: 100 }),
    row('same', { busySeasonHours: 102 }),
    row('none', { sites: [], busySeasonHours: 0 }),
    row('worse', { standing: 'found-worse', busySeasonHours: 0 }),
  ]);
  expect(rows.map(({ id }) => id)).toEqual(['light', 'same', 'heavy', 'best', 'none', 'worse']);
  expect(rows.map(({ standing }) => standing)).toEqual([
    'recommended',
    ...Array.from({ length: 4 }, () => 'tied'),
    'found-worse',
  ]);
});

test('with one seed each, what differs by no more than searches of one campus do is not called worse', () => {
  const best = named(contestant('best', [0, 1000]));
  const near = named(contestant('near', [0, 960]));
  const far = named(contestant('far', [0, 900]));
  const of = compared([best, near, far], [0, 0, 0, 50, 0]);
  expect(standsAgainst(of, near).standing).toBe('tied');
  expect(standsAgainst(of, far).standing).toBe('found-worse');
  expect([near, far].map((c) => isNear(of, c))).toEqual([true, false]);
});
