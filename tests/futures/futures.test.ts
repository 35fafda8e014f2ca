import { describe, expect, it } from 'vitest';
import { pbinom } from 'lib-r-math.js';
import type { Campus } from '#domain/campus.js';
import type { Decisions, Plan } from '#domain/plan.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { asPlanned, futures } from '#futures/futures.js';
import { meetFutures } from '#futures/meet-futures.js';
import type { FutureRunner } from '#futures/order.js';
import { oddsOf } from '#futures/sampling/odds.js';
import { sampleWorld } from '#futures/sampling/world.js';
import { completePlan } from '#optimizer/allocate/complete-plan.js';
import { cents } from '#units/cents.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { siteAYear } from '../support/tiny/promises.js';
import { ANYTHING, tinyCampus, tinyFund, tinyPool } from '../support/tiny/tiny-campus.js';

const HERE: FutureRunner = { parallel: 1, run: (order) => Promise.resolve(meetFutures(order)) };

const YEARLY: Campus['commitments'] = [
  {
    id: 'yearly',
    name: 'One site a year',
    strength: 'intended',
    test: siteAYear(2028, 2029),
    saidBy: 'President',
    saidTo: 'campus',
    date: '2026-04-22',
    document: 'Address',
    public: true,
    points: 0,
  },
];

const TWO: Decisions = {
  placements: [
    { site: 'A', buildType: 'beds', year: fiscalYear(2028) },
    { site: 'B', buildType: 'fruit', year: fiscalYear(2029) },
  ],
  hires: [],
  workDays: [],
  purchases: [],
};

function planned(campus: Campus, decisions: Decisions = TWO): Plan {
  return completePlan(campus, decisions, campusCharges(campus)).plan;
}

function meet(campus: Campus, plan: Plan, of: { count: number; policy?: 'keep' | 'replan' }) {
  const { count, policy = 'keep' } = of;
  return meetFutures({ campus, plan, seed: 3, policy, from: 0, to: count });
}

describe('a plan in sampled futures', () => {
  it('is the plan itself where nothing is left to chance', () => {
    const campus = tinyCampus({ commitments: YEARLY });
    const met = asPlanned(campus, planned(campus));
    expect(met.skipped).toEqual([]);
    expect(met.unpaid).toBe(0);
    expect(Math.max(...met.unserved)).toBe(0);
    expect(met.broken).toEqual([-1]);
  });

  it('keeps a promise as often as its gift comes: the share is binomial', async () => {
    const gift = tinyFund('gift', 60_000, {
      kind: 'gift',
      status: 'pledged',
      restriction: { ...ANYTHING, lines: ['build'] },
    });
    const care = tinyFund('care', 50_000, { restriction: { ...ANYTHING, lines: ['care'] } });
    // Hired crews do not leave, so that money alone decides.
    const pools = [{ ...tinyPool('crew', 1000), kind: 'contractor' as const }];
    const campus = tinyCampus({ commitments: YEARLY, funds: [gift, care], pools });
    const ask = { campus, plan: planned(campus), seed: 5, futures: 400, mended: 0, runner: HERE };
    const { fixed } = await futures({ ...ask, onStep: () => undefined });
    const kept = fixed.promises[0]?.keptThrough[0];
    const count = Math.round((kept?.share ?? NaN) * 400);
    // The money is ample where it comes, so the promise is kept then and only then: 0.9 of the time.
    expect(pbinom(count, 400, 0.9)).toBeGreaterThan(0.0005);
    expect(1 - pbinom(count - 1, 400, 0.9)).toBeGreaterThan(0.0005);
    expect(fixed.gifts[0]?.comes.share).toBeCloseTo(kept?.share ?? NaN, 9);
    expect(kept?.low).toBeLessThan(0.9);
    expect(kept?.high).toBeGreaterThan(0.9);
  });

  it('never keeps the promise less often with more money, future by future', () => {
    const poor = tinyCampus({
      commitments: YEARLY,
      funds: [tinyFund('capital', 48_000, { carry: 0 })],
    });
    const plan = planned(poor);
    const sums = [40_000, 48_000, 56_000, 64_000];
    const broken = sums.map((sum) => {
      const campus = { ...poor, funds: [tinyFund('capital', sum, { carry: 0 })] };
      return meet(campus, plan, { count: 100 }).map((o) => {
        const year = o.broken[0] ?? -1;
        return year < 0 ? Infinity : year;
      });
    });
    broken
      .slice(1)
      .forEach((richer, i) =>
        richer.forEach((year, f) =>
          expect(year).toBeGreaterThanOrEqual(broken[i]?.[f] ?? Infinity),
        ),
      );
    const shares = broken.map((all) => all.filter((y) => y === Infinity).length);
    expect(shares[0]).toBeLessThan(shares[3] ?? 0);
  });

  it('asks for more care after care was left undone, since weeds set ground back', () => {
    const campus = tinyCampus({ pools: [tinyPool('staff', 160)] });
    const plan = planned(campus);
    const patient = {
      ...campus,
      overrides: [
        {
          ...{ coefficient: 'care.weed-set-back', value: 0, unit: 'years per unserved share' },
          ...{ source: 'invented for a test', date: '2026-01-01' },
        },
      ],
    };
    const wanted = (of: Campus) =>
      meet(of, plan, { count: 30 }).map((o) => o.wanted.reduce((sum, h) => sum + h, 0));
    const weeds = wanted(campus);
    const none = wanted(patient);
    weeds.forEach((hours, f) => expect(hours).toBeGreaterThanOrEqual((none[f] ?? 0) - 1e-6));
    expect(weeds.some((hours, f) => hours > (none[f] ?? 0) + 1)).toBe(true);
  });

  it('builds later what was skipped where it is made anew, and never less', () => {
    const campus = tinyCampus({ funds: [tinyFund('capital', 44_000, { carry: 1 })] });
    const plan = planned(campus);
    const kept = meet(campus, plan, { count: 60 }).map((o) => o.skipped.length);
    const anew = meet(campus, plan, { count: 60, policy: 'replan' }).map((o) => o.skipped.length);
    anew.forEach((count, f) => expect(count).toBeLessThanOrEqual(kept[f] ?? 0));
    expect(anew.reduce((a, b) => a + b, 0)).toBeLessThan(kept.reduce((a, b) => a + b, 0));
  });

  it('gives the same for a seed, whatever way futures are shared out', () => {
    const campus = tinyCampus({ commitments: YEARLY });
    const plan = planned(campus);
    const order = { campus, plan, seed: 9, policy: 'keep' as const };
    const whole = meetFutures({ ...order, from: 0, to: 12 });
    const parts = [
      ...meetFutures({ ...order, from: 0, to: 5 }),
      ...meetFutures({ ...order, from: 5, to: 12 }),
    ];
    expect(parts).toEqual(whole);
    const anew = { ...order, policy: 'replan' as const };
    const again = [
      ...meetFutures({ ...anew, from: 4, to: 12 }),
      ...meetFutures({ ...anew, from: 0, to: 4 }),
    ].sort((a, b) => a.future - b.future);
    expect(again).toEqual(meetFutures({ ...anew, from: 0, to: 12 }));
    expect(meetFutures({ ...order, seed: 10, from: 0, to: 12 })).not.toEqual(whole);
  });

  it('meets the same luck on a campus that differs in money only', () => {
    const campus = tinyCampus();
    const { odds } = oddsOf(campus);
    const richer = { ...campus, funds: [tinyFund('capital', 900_000, { floor: cents(5) })] };
    const key = { seed: 1, future: 4 };
    expect(sampleWorld(richer, odds, key).buildCost).toEqual(
      sampleWorld(campus, odds, key).buildCost,
    );
    expect(sampleWorld(richer, odds, key).prices).toEqual(sampleWorld(campus, odds, key).prices);
  });
});
