import { expect, test } from 'vitest';
import type { Moment } from '../peers/outcome.js';
import type { OursRun } from './ours.js';
import { threadsTable } from './threads-table.js';

const ran = (moments: readonly Moment[]): OursRun => ({
  ...{ ended: 'stopped', ending: 'time-limit', seconds: 60, moments, held: {}, tiers: [] },
  ...{ plans: { told: 1, sound: 1 }, verified: true, earlyProven: true },
  ...{ objective: 100, bound: 102 },
});

const plan = { seconds: 1, objective: 100 };
const at = (seconds: number, bound: number) => ({ seconds, bound });

test('times to a gap are told as ratios, and what only one of the two reached is counted apart', () => {
  const one = ran([plan, at(10, 105), at(40, 103)]);
  const two = ran([plan, at(5, 105), at(10, 103), at(20, 101)]);
  const table = threadsTable([{ name: 'p', seconds: 60, one, two }], [0.05, 0.03, 0.01]);
  expect(table).toContain('| p | 5.00 % | 10.0 | 5.0 | 0.50 |');
  expect(table).toContain('| p | 3.00 % | 40.0 | 10.0 | 0.25 |');
  expect(table).toContain('| p | 1.00 % | - | 20.0 | - |');
  // The geometric mean of 0.5 and 0.25.
  expect(table).toContain('0.35 in the mean');
  expect(table).toContain('only two threads reached: 1; only one: 0.');
  expect(table).toContain('| p | 60 | 2.00 % | 2.00 % | 1.0000 |');
});

test('where no gap was reached by both there is no mean', () => {
  const none = ran([plan]);
  expect(threadsTable([{ name: 'p', seconds: 60, one: none, two: none }], [0.05])).toContain(
    'none reached by both',
  );
});
