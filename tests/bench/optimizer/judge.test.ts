import { expect, test } from 'vitest';
import type { PeerRun } from '../peers/outcome.js';
import type { Contest } from './contest.js';
import { gapOf, judge, secondsTo, secondsToGap } from './judge.js';
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
  sites: 3,
  firstPlan: 1,
  held: new Map(),
  earlyProven: true,
};

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
  const verdict = judge(contest);
  expect(verdict.bestPeer).toBe(1000);
  expect(verdict.matchedAfter).toBe(5);
  expect(verdict.gapRatio).toBeCloseTo(20 / 1010 / 0.1, 12);
});

test('the table tells what is not known by a dash, never by a zero', () => {
  const table = benchTable([contest]);
  expect(table).toContain(
    '| three sites | ours, verified | own | 1.0 | 1.0000 | 1.0198 | 1.98 % |',
  );
  expect(table).toContain('| three sites | glpsol | plain | - | - | - | - | - | stopped | - |');
  expect(benchTable([{ ...contest, ours: { ...ours, verified: false } }])).toContain(
    'NOT VERIFIED',
  );
});

test('the plot has a line for each plan and bound that was told', () => {
  const plot = benchPlot([contest]);
  expect(plot.match(/<polyline/g)).toHaveLength(3);
  expect(plot).not.toContain('NaN');
});
