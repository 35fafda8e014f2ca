import { expect, test } from 'vitest';
import type { SolveRequest } from '#planning/solve-request.js';
import { progressStage, progressText } from '#apps/start/terminal/progress-text.js';

const startedAt = new Date('2027-07-01T08:00:00Z');
const now = new Date('2027-07-01T08:00:12.9Z');

const queued: SolveRequest = {
  id: 'solve',
  campusId: 'campus',
  campusVersion: 1,
  seed: 1,
  startFromPlan: null,
  broughtPlan: null,
  limits: { seconds: 45, work: null, gap: null },
  state: 'queued',
  progress: null,
  attempts: 0,
  cancelWanted: false,
  planId: null,
  ending: null,
  conflict: [],
  problem: null,
  requestedAt: startedAt,
  startedAt: null,
  finishedAt: null,
};
const solving: SolveRequest = { ...queued, state: 'solving', attempts: 1, startedAt };
const known = {
  elapsedSeconds: 12,
  bestObjective: 2868,
  bound: 2966,
  gap: 0.0342,
  tier: 'benefit',
  message: 'best plan so far builds 23 of 32 sites',
};
const withPlan: SolveRequest = { ...solving, progress: known };
const onPromise: SolveRequest = {
  ...solving,
  progress: { ...known, gap: 1, tier: 'commitment:site-a-year' },
};
const unknown: SolveRequest = { ...solving, progress: { ...known, gap: null, tier: null } };

test.each([
  [queued, 'waiting for the solver'],
  [{ ...queued, attempts: 1 }, 'waiting to be retried'],
  [solving, '12 s, starting'],
  [withPlan, '12 s, best plan so far builds 23 of 32 sites, gap 3.4 % (benefit)'],
  [unknown, '12 s, best plan so far builds 23 of 32 sites, gap not known yet'],
  [onPromise, '12 s, best plan so far builds 23 of 32 sites, now on the promise site-a-year'],
])('a solve under way in one line: %#', (request, line) => {
  expect(progressText(request, now)).toBe(line);
});

test('the stage changes when a worker takes the solve and when a plan is found', () => {
  const stages = [queued, solving, withPlan].map(progressStage);
  expect(new Set(stages).size).toBe(3);
});
