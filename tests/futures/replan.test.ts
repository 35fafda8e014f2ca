import { beforeAll, describe, expect, it } from 'vitest';
import type { Campus } from '#domain/campus.js';
import type { Decisions, Plan } from '#domain/plan.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { asPlanned } from '#futures/futures.js';
import { meetFutures } from '#futures/meet-futures.js';
import type { Policy } from '#futures/order.js';
import { pairedResult } from '#futures/results/pair.js';
import { NO_CHANCE } from '#futures/sampling/odds.js';
import { sampleWorld } from '#futures/sampling/world.js';
import type { Outcome } from '#futures/stress/outcome.js';
import { runFuture } from '#futures/stress/run-future.js';
import { settingOf } from '#futures/stress/setting.js';
import { completePlan } from '#optimizer/allocate/complete-plan.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { demoSource } from '../support/plan-source.js';
import { tinyCampus, tinyFund, tinyPool } from '../support/tiny/tiny-campus.js';

const FUTURES = 16;

function met(campus: Campus, plan: Plan, policy: Policy): Outcome[] {
  return meetFutures({ campus, plan, seed: 1, policy, from: 0, to: FUTURES });
}

/** The plan made anew each year with nothing left to chance. */
function anewAsPlanned(campus: Campus, plan: Plan): Outcome {
  const works = campus.construction.map((c) => ({ ...c, certaintyPercent: 100 }));
  const sure = { ...campus, construction: works };
  const world = sampleWorld(sure, NO_CHANCE, { seed: 0, future: 0 });
  return runFuture(settingOf({ campus, plan, policy: 'replan' }, NO_CHANCE), world, 0);
}

describe('a plan made anew each year, on the strained demo', () => {
  let campus: Campus;
  let plan: Plan;
  let kept: Outcome[];
  let anew: Outcome[];

  beforeAll(() => {
    ({ campus, plan } = demoSource('strained'));
    kept = met(campus, plan, 'keep');
    anew = met(campus, plan, 'replan');
  });

  it('is the plan itself where nothing is left to chance', () => {
    expect(anewAsPlanned(campus, plan)).toEqual(asPlanned(campus, plan));
  });

  it('keeps the yearly promise in at least as many futures through each year', () => {
    const yearly = campus.commitments.findIndex((c) => c.test.kind === 'sites-each-year');
    const through = (outcomes: Outcome[], year: number) =>
      outcomes.filter(({ broken }) => broken[yearly] === -1 || (broken[yearly] ?? 0) > year).length;
    for (let year = 0; year < campus.calendar.horizonYears; year++) {
      expect(through(anew, year)).toBeGreaterThanOrEqual(through(kept, year));
    }
    const gained = pairedResult(campus, kept, anew)?.promises[yearly];
    expect(gained?.longer.share).toBeGreaterThan(gained?.shorter.share ?? 1);
  });

  it('builds at least as many sites in all, none of them twice', () => {
    const built = (outcomes: Outcome[]) => outcomes.reduce((sum, o) => sum + o.built, 0);
    expect(built(anew)).toBeGreaterThanOrEqual(built(kept));
    const all = campus.candidates.length;
    for (const { built: count } of anew) expect(count).toBeLessThanOrEqual(all);
  });
});

const NO_HIRES = { hires: [], workDays: [], purchases: [] };

function planned(campus: Campus, placements: Decisions['placements']): Plan {
  return completePlan(campus, { ...NO_HIRES, placements }, campusCharges(campus)).plan;
}

describe('a plan made anew each year, on a small campus', () => {
  it('puts another site in a promised year whose own ground works hold', () => {
    const promise: Campus['commitments'] = [
      {
        ...{ id: 'yearly', name: 'One a year', strength: 'intended', points: 0, public: true },
        ...{ saidBy: 'President', saidTo: 'campus', date: '2026-04-22', document: 'Address' },
        test: {
          ...{ kind: 'sites-each-year', count: 1, countsFromSqFt: 1000 },
          ...{ from: fiscalYear(2028), to: fiscalYear(2028) },
        },
      },
    ];
    const campus = tinyCampus({ commitments: promise });
    const plan = planned(campus, [
      { site: 'A', buildType: 'beds', year: fiscalYear(2028) },
      { site: 'B', buildType: 'fruit', year: fiscalYear(2029) },
    ]);
    const works: Campus['construction'] = [
      {
        ...{ id: 'works', name: 'Works', kind: 'utility', sites: ['A'], certaintyPercent: 100 },
        ...{ from: fiscalYear(2028), to: fiscalYear(2028), source: 'invented for a test' },
      },
    ];
    const world = { ...sampleWorld(campus, NO_CHANCE, { seed: 0, future: 0 }), works };
    const run = (policy: Policy) =>
      runFuture(settingOf({ campus, plan, policy }, NO_CHANCE), world, 0);
    expect(run('keep').broken).toEqual([0]);
    expect(run('replan').broken).toEqual([-1]);
    expect(run('replan').skipped).toEqual([]);
  });

  it('builds a site as a cheaper type where its own has become too dear', () => {
    const campus = tinyCampus({
      funds: [tinyFund('capital', 45_000, { carry: 0 })],
      pools: [tinyPool('staff', 1000)],
    });
    const [beds, fruit] = campus.buildTypes;
    const types = [beds, { ...fruit, costPerSqFt: 1_00 }] as Campus['buildTypes'];
    const both = { ...campus, buildTypes: types };
    const plan = planned(both, [{ site: 'A', buildType: 'beds', year: fiscalYear(2028) }]);
    const world = sampleWorld(both, NO_CHANCE, { seed: 0, future: 0 });
    const dear = { ...world, buildCost: new Map([['A', 1.4]]) };
    const run = (policy: Policy) =>
      runFuture(settingOf({ campus: both, plan, policy }, NO_CHANCE), dear, 0);
    expect(run('keep').built).toBe(0);
    expect(run('replan').built).toBe(1);
  });
});
