import { describe, expect, test } from 'vitest';
import type { PlanChecker } from '#planning/ports/plan-checker.js';
import type { Solving } from '#planning/ports/solving.js';
import { LeaseKeeper } from '#planning/use-cases/keep-lease.js';
import { requestSolve } from '#planning/use-cases/request-solve.js';
import { runSolveJob } from '#planning/use-cases/run-solve-job.js';
import { anyDocument, memoryStore } from '../support/planning/memory-store.js';

const limits = { seconds: 60, work: null, gap: null };
const plan = { sites: ['TVU-14'] };
const timing = { renewEvery: 10, lapsesAfter: 1_000, sweepEvery: 10 };

const untilAborted = (signal: AbortSignal) =>
  new Promise<void>((resolve) => signal.addEventListener('abort', () => resolve()));
const aMoment = () => new Promise((resolve) => setTimeout(resolve, 20));

const atOnce: Solving = {
  solve: async () => ({ ending: 'proven', plan, solverVersion: 'test', conflict: [] }),
};
const untilStopped: Solving = {
  solve: async (_job, { signal, onProgress }) => {
    onProgress({ ...nothingYet, elapsedSeconds: 1 });
    await untilAborted(signal);
    return { ending: 'cancelled', plan, solverVersion: 'test', conflict: [] };
  },
};
const nothingYet = {
  elapsedSeconds: 0,
  ...{ bestObjective: null, bound: null, gap: null, tier: null, message: '' },
};
const agrees: PlanChecker = { check: async () => ({ verified: true, breaches: [] }) };

/** One request taken by one worker. */
async function started(solving: Solving, checker: PlanChecker = agrees) {
  const store = memoryStore();
  const campus = await store.campuses.add({ name: 'Tamarack Vale', document: anyDocument });
  const wish = { campusId: campus.id, seed: 1, limits };
  await requestSolve(store, wish);
  const taken = (await store.queue.take())!;
  const worker = new AbortController();
  const keeper = new LeaseKeeper(store.queue, taken.lease, {
    timing,
    progressEvery: 5,
    stopping: worker.signal,
    onError: (error) => {
      throw error;
    },
  });
  const ports = {
    ...store,
    solving,
    checker,
    overview: { of: async () => ({ headline: 'TVU-14' }) },
    newPlanId: () => 'plan-1',
  };
  const outcome = runSolveJob(ports, taken, keeper);
  const request = () => store.requests.find(taken.request.id);
  return { ...store, outcome, request, worker, id: taken.request.id };
}

describe('a worker that took a solve', () => {
  test('stores the verified plan with what it was solved from', async () => {
    const { outcome, plans, request } = await started(atOnce);
    expect(await outcome).toBe('stored');
    expect(await request()).toMatchObject({ state: 'done', ending: 'proven', planId: 'plan-1' });
    const overview = { headline: 'TVU-14' };
    const from = { campusVersion: 1, seed: 1, solverVersion: 'test', limits };
    expect(await plans.load('plan-1')).toMatchObject({ plan, overview, ...from });
  });

  test('begins from the plan that was asked for', async () => {
    const store = memoryStore();
    const campus = await store.campuses.add({ name: 'Tamarack Vale', document: anyDocument });
    const other = await store.campuses.add({ name: 'Elsewhere', document: anyDocument });
    const wish = { campusId: campus.id, seed: 1, limits };
    const starts: unknown[] = [];
    const solving: Solving = {
      solve: async (job) => {
        starts.push(job.start);
        return { ending: 'proven', plan, solverVersion: 'test', conflict: [] };
      },
    };
    const work = async (id: string) => {
      const taken = (await store.queue.take())!;
      const keeper = new LeaseKeeper(store.queue, taken.lease, {
        ...{ timing, progressEvery: 5, stopping: new AbortController().signal },
        onError: () => undefined,
      });
      const overview = { of: async () => ({}) };
      await runSolveJob(
        { ...store, solving, checker: agrees, overview, newPlanId: () => id },
        taken,
        keeper,
      );
    };
    await requestSolve(store, wish);
    await work('first');
    expect(await requestSolve(store, { ...wish, startFromPlan: 'first' })).toMatchObject({
      kind: 'queued',
    });
    await work('second');
    expect(starts).toEqual([null, plan]);
    const elsewhere = { ...wish, campusId: other.id, startFromPlan: 'first' };
    expect(await requestSolve(store, elsewhere)).toEqual({ kind: 'unknown-plan' });
  });

  test('does not store a plan that the checks refuse, and says that it is a defect', async () => {
    const breach = { rule: 'fund-vintage', record: 'fund F1', message: 'one cent over' };
    const refuses = { check: async () => ({ verified: false, breaches: [breach] }) };
    const { outcome, plans, request } = await started(atOnce, refuses);
    expect(await outcome).toBe('failed');
    const problem = { code: 'plan-not-verified', value: [breach] };
    expect(await request()).toMatchObject({ state: 'failed', planId: null, problem });
    expect(await plans.load('plan-1')).toBeNull();
  });

  test('closes the request when the solver throws, so that it is not tried for ever', async () => {
    const throws = { solve: () => Promise.reject(new Error('column 12 is lost')) };
    const { outcome, request } = await started(throws);
    expect(await outcome).toBe('failed');
    const problem = (await request())?.problem;
    expect(problem).toMatchObject({ code: 'solver-defect' });
    expect(problem?.problem).toContain('column 12 is lost');
  });

  test('reports progress and, told to cancel, stores the best plan so far', async () => {
    const { id, outcome, queue, request } = await started(untilStopped);
    await expect.poll(async () => (await request())?.progress?.elapsedSeconds).toBe(1);
    await queue.cancel(id);
    expect(await outcome).toBe('stored');
    expect(await request()).toMatchObject({ state: 'cancelled', planId: 'plan-1' });
  });

  test('gives the request back when the worker has to stop', async () => {
    const { outcome, plans, request, worker } = await started(untilStopped);
    await aMoment();
    worker.abort();
    expect(await outcome).toBe('given-back');
    expect(await request()).toMatchObject({ state: 'queued', attempts: 0, planId: null });
    expect(await plans.load('plan-1')).toBeNull();
  });

  test('gives back what it was only about to begin', async () => {
    const { outcome, request, worker } = await started(atOnce);
    worker.abort();
    expect(await outcome).toBe('given-back');
    expect(await request()).toMatchObject({ state: 'queued', attempts: 0 });
  });

  test('stores a plan that was ready when the worker had to stop', async () => {
    const provenMeanwhile: Solving = {
      solve: async (_job, { signal }) => {
        await untilAborted(signal);
        return { ending: 'proven', plan, solverVersion: 'test', conflict: [] };
      },
    };
    const { outcome, request, worker } = await started(provenMeanwhile);
    await aMoment();
    worker.abort();
    expect(await outcome).toBe('stored');
    expect(await request()).toMatchObject({ state: 'done' });
  });

  test('stops and stores nothing once its lease is lost', async () => {
    const { outcome, plans, queue, request } = await started(untilStopped);
    await queue.recover(-1);
    expect(await outcome).toBe('lease-lost');
    expect(await request()).toMatchObject({ state: 'queued', planId: null });
    expect(await plans.load('plan-1')).toBeNull();
  });
});

test('a solve of a campus that is not there is refused, and limits out of bounds are a defect', async () => {
  const store = memoryStore();
  const wish = { campusId: 'none', seed: 1, limits };
  expect(await requestSolve(store, wish)).toEqual({ kind: 'unknown-campus' });
  const endless = { ...wish, limits: { ...limits, seconds: Infinity } };
  await expect(requestSolve(store, endless)).rejects.toThrow(RangeError);
});
