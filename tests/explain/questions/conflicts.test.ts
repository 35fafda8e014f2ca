/**
 * What cannot all be kept on tiny campuses, beside every subset of what binds, each judged by trying
 * every decision. No outside source is needed: that is what a smallest conflicting set is.
 */
import { beforeAll, expect, test } from 'vitest';
import type { Campus } from '#domain/campus.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { conflicts } from '#explain/questions/conflicts/conflicts.js';
import { keeping, membersOf, type Member } from '#explain/questions/conflicts/members.js';
import { withChanges } from '#explain/questions/conflicts/changes.js';
import { MAY_GO_UNSERVED } from '#domain/labor.js';
import type { Solver } from '#mip/solver.js';
import { completePlan } from '#optimizer/allocate/complete-plan.js';
import { resolveOrder } from '#optimizer/resolve/resolve-order.js';
import { checkPlan } from '#rules/check-plan.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import { dollarsInWords } from '#units/in-words.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { hereResolver } from '../../support/explain/here-resolver.js';
import { everyDecision } from '../../support/tiny/every-decision.js';
import { promise, siteAYear } from '../../support/tiny/promises.js';
import { tinyCampus, tinyFund, tinyPool } from '../../support/tiny/tiny-campus.js';

let solver: Solver;
beforeAll(async () => {
  solver = await loadHighsSolver();
});

/** One site a year for two years costs more than there is, and one type is barred by another promise. */
const campus: Campus = tinyCampus({
  funds: [tinyFund('capital', 20_000, { carry: 0 })],
  calendar: { ...tinyCampus().calendar, horizonYears: 2 },
  commitments: [
    promise('yearly', 'binding', siteAYear(2028, 2029)),
    promise('fruit-only', 'binding', { kind: 'only-build-types', buildTypes: ['fruit'] }),
    promise('beds-at-a', 'binding', {
      kind: 'named-site',
      site: 'A',
      by: fiscalYear(2029),
      buildTypes: ['beds'],
    }),
  ],
});

function possible(of: Campus): boolean {
  const charges = campusCharges(of);
  return everyDecision(of).some((decisions) => {
    const { plan, shortages } = completePlan(of, decisions, charges);
    return shortages.length === 0 && checkPlan(of, plan).length === 0;
  });
}

const subsets = (all: readonly Member[]) =>
  all.reduce<Member[][]>((sets, m) => [...sets, ...sets.map((s) => [...s, m])], [[]]);
const texts = (sets: readonly (readonly { id: string }[])[]) =>
  sets
    .map((s) =>
      s
        .map((m) => m.id)
        .sort()
        .join(' '),
    )
    .sort();

test('sets and repairs are those of all subsets, each member is proven, each repair makes a verified plan', async () => {
  const answer = await conflicts({ campus, resolver: hereResolver(solver), seed: 1 });
  const all = membersOf(campus);
  const impossible = subsets(all).filter((kept) => !possible(keeping(campus, all, new Set(kept))));
  const smallest = impossible.filter(
    (s) => !impossible.some((o) => o.length < s.length && o.every((m) => s.includes(m))),
  );
  expect(texts(answer.sets.map((s) => s.members))).toEqual(texts(smallest));
  for (const set of answer.sets) expect(set.provenNecessary).toHaveLength(set.members.length);
  expect(answer.complete).toBe(true);
  expect(answer.repairs.length).toBeGreaterThan(1);
  for (const { changes, lets } of answer.repairs) {
    expect(possible(withoutAll(all, lets)), 'brute force on the repaired campus').toBe(true);
    solves(withChanges(campus, changes ?? []));
  }
  const shares = answer.repairs.map(({ prices }) =>
    (prices ?? []).reduce((s, p) => s + p.share, 0),
  );
  expect(shares).toEqual([...shares].sort((a, b) => a - b));
});

/** Solved anew with what the repair says and nothing else, a plan passes every check. */
function solves(mended: Campus): void {
  const { plan } = resolveOrder(
    { campus: mended, seed: 1, effort: { kind: 'proven' }, wish: 'best' },
    { solver, elapsed: () => 0 },
  );
  expect(plan && checkPlan(mended, plan)).toEqual([]);
}

const withoutAll = (all: readonly Member[], lets: readonly { readonly id: string }[]) =>
  keeping(campus, all, new Set(all.filter((m) => !lets.some((l) => l.id === m.id))));

test('money of a repair is what the cheapest plan lacks, in whole thousands', async () => {
  const only = { ...campus, commitments: [promise('yearly', 'binding', siteAYear(2028, 2029))] };
  const { repairs } = await conflicts({ campus: only, resolver: hereResolver(solver), seed: 1 });
  const money = repairs.find(({ lets }) => lets.every(({ id }) => id === 'money'))!;
  solves(withChanges(only, money.changes ?? []));
  const [price] = money.prices ?? [];
  expect((price?.amount ?? 0) % 1000).toBe(0);
  const less = (money.changes ?? []).map((change) =>
    change.change === 'add-fund'
      ? { ...change, inflows: change.inflows.map((i) => ({ ...i, dollars: i.dollars - 1000 })) }
      : change,
  );
  expect(possible(withChanges(only, less)), 'a thousand less in each year').toBe(false);
  expect(money.sentence).toContain(`${dollarsInWords(price?.amount ?? 0)} more is found`);
});

test('hours that a repair finds, by season and from a year on, are enough by brute force', async () => {
  const care = { kind: 'no-unserved-care', classes: MAY_GO_UNSERVED, seasons: 'all' } as const;
  const short: Campus = {
    ...tinyCampus({ calendar: campus.calendar, pools: [tinyPool('crew', 20)] }),
    commitments: [
      promise('yearly', 'binding', siteAYear(2028, 2029)),
      promise('all-care', 'binding', care),
    ],
  };
  expect(possible(short)).toBe(false);
  const { repairs } = await conflicts({ campus: short, resolver: hereResolver(solver), seed: 1 });
  const labor = repairs.find(({ lets }) => lets.some(({ id }) => id === 'labor'))!;
  const mended = withChanges(short, labor.changes ?? []);
  solves(mended);
  expect(possible(mended)).toBe(true);
  expect(labor.sentence).toMatch(/people are found for .*more each \w+.*, from FY28 on/);
});

test('where everything can be kept there is no set, and it says so', async () => {
  const kept = { ...campus, commitments: [] };
  const answer = await conflicts({ campus: kept, resolver: hereResolver(solver), seed: 1 });
  expect(answer.sets).toEqual([]);
  expect(answer.headline).toContain('Nothing binding stands against anything else');
});

test('frozen years that a promise stands against are named, and what opening them changes is counted', async () => {
  const frozen: Campus = {
    ...tinyCampus({ calendar: campus.calendar }),
    candidates: tinyCampus().candidates.filter(({ id }) => id === 'A'),
    published: {
      name: 'Plan 2027',
      date: '2027-01-15',
      frozenThrough: fiscalYear(2028),
      placements: [{ site: 'A', buildType: 'beds', year: fiscalYear(2028), announced: true }],
      hires: [],
      announcedWeight: 1,
      otherWeight: 1,
    },
    commitments: [
      promise('fruit-only', 'binding', { kind: 'only-build-types', buildTypes: ['fruit'] }),
    ],
  };
  const { sets, repairs } = await conflicts({
    campus: frozen,
    resolver: hereResolver(solver),
    seed: 1,
  });
  expect(texts(sets.map((s) => s.members))).toEqual(['frozen-years fruit-only']);
  expect(sets[0]!.sentence).toContain('the years that Plan 2027 froze');
  const opened = repairs.find(({ lets }) => lets[0]!.id === 'frozen-years')!;
  expect(opened.sentence).toContain('the years that Plan 2027 froze are open again');
  expect(opened.prices).toMatchObject([{ amount: 1, unit: 'decisions', share: 1 }]);
});
