import { expect, test } from 'vitest';
import type { PeerRun } from '../peers/outcome.js';
import type { Contest } from './contest.js';
import { gapOf, isHalved, isMatched, judge, secondsTo, secondsToGap } from './judge.js';
import { benchPlot } from './plot.js';
import { benchTable } from './table.js';

const run = (moments: PeerRun['moments'], end: Partial<PeerRun>): PeerRun => ({
  ended: 'stopped',
  seconds: 60,
  moments,
  ...end,
});

const ours = {
  ...run(
    [
      { seconds: 1, objective: 900 },
      { seconds: 2, bound: 1030 },
      { seconds: 5, objective: 999.95 },
      { seconds: 9, objective: 1010 },
    ],
    { objective: 1010, bound: 1030, peakMiB: 200 },
  ),
  ending: 'time-limit',
  verified: true,
  plans: { told: 2, sound: 2 },
  firstPlan: 1,
  tiers: [],
  held: {},
  earlyProven: true,
};

const NONE = { told: 0, sound: 0 };
const theirs = run([{ seconds: 40, objective: 1000 }], { objective: 1000, bound: 1100 });
const contest: Contest = {
  name: 'three sites',
  sites: 3,
  years: 2,
  seconds: 60,
  ours,
  sizes: { plain: { rows: 10, columns: 20, terms: 40 } },
  peers: [
    { peer: 'cbc', formulation: 'plain', run: theirs },
    { peer: 'glpsol', formulation: 'plain', run: run([], {}) },
  ],
};

test('a gap is a share of the plan, and unknown where either side is', () => {
  expect(gapOf({ objective: 1000, bound: 1100 })).toBeCloseTo(0.1, 12);
  expect(gapOf({ objective: 1000 })).toBeUndefined();
});

test('a plan within a ten-thousandth counts as equal, one below that does not', () => {
  expect(secondsTo(ours, 1000)).toBe(5);
  expect(secondsTo(ours, 1000.2)).toBe(9);
  expect(secondsTo(ours, 1011)).toBeUndefined();
});

test('a gap is reached when plan and bound together reach it', () => {
  expect(secondsToGap(ours, 0.15)).toBe(2);
  expect(secondsToGap(ours, 0.02)).toBe(9);
  expect(secondsToGap(ours, 0.001)).toBeUndefined();
});

test('ours is judged against the best of all peers', () => {
  const verdict = judge(contest, 'plain');
  expect(verdict.bestPeer).toBe(1000);
  expect(verdict.matchedAfter).toBe(5);
  expect(verdict.gapRatio).toBeCloseTo(20 / 1010 / 0.1, 12);
});

test('where no peer has a plan or a gap, ours is asked for any', () => {
  const alone = judge({ ...contest, peers: [] }, 'plain');
  expect([isMatched(alone, 60), isMatched(alone, 5), isHalved(alone)]).toEqual([true, false, true]);
  expect(isHalved(judge(contest, 'plain'))).toBe(true);
  const near = { ...theirs, bound: 1030 };
  const close = { peer: 'cbc' as const, formulation: 'plain', run: near };
  expect(isHalved(judge({ ...contest, peers: [close] }, 'plain'))).toBe(false);
});

test('peers on another model are judged apart', () => {
  const tightened = { peer: 'cbc' as const, formulation: 'tightened', run: theirs };
  const verdict = judge({ ...contest, peers: [tightened] }, 'plain');
  expect(verdict.bestPeer).toBeUndefined();
  expect(benchTable([{ ...contest, peers: [...contest.peers, tightened] }])).toContain(
    '| three sites | 60 | cbc | tightened | 40.0 | 40.0 |',
  );
});

test('the table tells what is not known by a dash, never by a zero', () => {
  const table = benchTable([contest]);
  expect(table).toContain(
    '| three sites | 60 | ours | own | 1.0 | 5.0 | 1.0000 | 1.0198 | 1.98 % | stopped | 200 | yes, 2 of 2 |',
  );
  expect(table).toContain(
    '| three sites | 60 | glpsol | plain | - | - | - | - | - | stopped | - | - |',
  );
  const unsound = { ...ours, verified: false, plans: { told: 2, sound: 1 } };
  expect(benchTable([{ ...contest, ours: unsound }])).toContain('NO, 1 of 2');
});

test('growth is told as a power of the sites, from three sizes on', () => {
  const of = (sites: number) => ({
    ...contest,
    family: 'tight, 30 years',
    sites,
    ours: { ...ours, firstPlan: sites / 10, peakMiB: 100 * sites ** 2 },
  });
  const table = benchTable([of(10), of(20), of(40)]);
  expect(table).toContain('| tight, 30 years | 10 to 40 | 0.0 | 1.0 | 0.0 | 2.0 |');
  expect(benchTable([of(10), of(20)])).not.toContain('| tight, 30 years |');
});

test('the plot has a line for each plan and bound that was told, a panel for each model', () => {
  const lines = (svg: string) => svg.match(/<polyline/g);
  expect(lines(benchPlot([contest]))).toHaveLength(3);
  expect(benchPlot([contest])).not.toContain('NaN');
  const named = (svg: string) =>
    [...svg.matchAll(/>(ours|highs|glpk\.js|cbc|glpsol)</g)].map(([, name]) => name);
  expect(named(benchPlot([contest]))).toEqual(['ours', 'cbc', 'glpsol']);
  const tightened = { peer: 'highs' as const, formulation: 'tightened', run: theirs };
  const both = benchPlot([{ ...contest, peers: [...contest.peers, tightened] }]);
  expect(lines(both)).toHaveLength(3 + 3);
  expect(both).toContain('peers on the tightened model');
});

test('a proof that there is no plan counts as an answer', () => {
  const { firstPlan: _, objective: __, bound: ___, ...rest } = ours;
  const none = { ...rest, ...run([], { ended: 'infeasible', seconds: 4 }), plans: NONE };
  const alone = { ...contest, ours: none, peers: [] };
  expect(judge(alone, 'plain').matchedAfter).toBe(4);
  expect(benchTable([alone])).toContain('| infeasible | 200 | no plan |');
});
