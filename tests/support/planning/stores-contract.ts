import { randomUUID } from 'node:crypto';
import { expect, test } from 'vitest';
import { mostAttempts } from '#planning/lease-timing.js';
import type { CampusStore } from '#planning/ports/campus-store.js';
import type { DecisionStore } from '#planning/ports/decision-store.js';
import type { NewPlan, PlanStore } from '#planning/ports/plan-store.js';
import type { SolveRequestStore } from '#planning/ports/solve-request-store.js';
import type {
  SolveClosing,
  SolveLease,
  SolveQueue,
  TakenSolve,
} from '#planning/ports/solve-queue.js';
import type { SolveProgress, SolveRequest } from '#planning/solve-request.js';
import { anError } from '#domain/problem.js';
import { broughtPlansKeepTheirPromises } from './brought-plans-contract.js';
import { decisionsKeepTheirPromises } from './decisions-contract.js';

export interface Stores {
  readonly campuses: CampusStore;
  readonly plans: PlanStore;
  readonly requests: SolveRequestStore;
  readonly queue: SolveQueue;
  readonly decisions: DecisionStore;
}

const limits = { seconds: 5, work: null, gap: 0.01 };
const pause = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds));

/** What every adapter of the stores promises. The queue is empty before and after each test. */
export function storesKeepTheirPromises(stores: () => Stores): void {
  campusesKeepTheirPromises(stores);
  requestsKeepTheirPromises(stores);
  leasesKeepTheirPromises(stores);
  decisionsKeepTheirPromises(stores);
  broughtPlansKeepTheirPromises(stores);
}

function campusesKeepTheirPromises(stores: () => Stores): void {
  test('a campus comes back as it was given, whatever its text', async () => {
    const { campuses } = stores();
    const document = { z: 1, a: { '10': 0.1, '2': null }, text: 'NUL \u0000, é, 🌱, \\' };
    const { id, version } = await campuses.add({ name: 'Tamarack Vale', document });
    const loaded = await campuses.load(id);
    expect(version).toBe(1);
    expect(loaded).toMatchObject({ id, name: 'Tamarack Vale', version: 1 });
    expect(JSON.stringify(loaded?.document)).toBe(JSON.stringify(document));
  });

  test('every version stays readable', async () => {
    const { campuses } = stores();
    const { id } = await campuses.add({ name: 'Old name', document: { v: 1 } });
    const change = { id, expectedVersion: 1, name: 'New name', document: { v: 2 } };
    expect(await campuses.replace(change)).toMatchObject({ kind: 'saved', campus: { version: 2 } });
    expect(await campuses.load(id, 1)).toMatchObject({ name: 'Old name', document: { v: 1 } });
    expect(await campuses.load(id)).toMatchObject({ name: 'New name', document: { v: 2 } });
    expect(await campuses.load(id, 3)).toBeNull();
    expect((await campuses.list()).filter((campus) => campus.id === id)).toMatchObject([
      { name: 'New name', version: 2 },
    ]);
  });

  test('of two who change the same version only one is saved', async () => {
    const { campuses } = stores();
    const { id } = await campuses.add({ name: 'A', document: {} });
    const save = (by: string) =>
      campuses.replace({ id, expectedVersion: 1, name: by, document: { by } });
    const outcomes = await Promise.all([save('one'), save('two'), save('three')]);
    const saved = outcomes.filter(({ kind }) => kind === 'saved');
    const refused = outcomes.filter(({ kind }) => kind === 'version-conflict');
    expect([saved.length, refused.length]).toEqual([1, 2]);
    expect(refused[0]).toEqual({ kind: 'version-conflict', current: 2 });
  });

  test('what is not there is said to be not there', async () => {
    const { campuses, plans, requests, queue } = stores();
    const id = randomUUID();
    expect(await campuses.load(id)).toBeNull();
    expect(await plans.load(id)).toBeNull();
    expect(await plans.listOf(id)).toEqual([]);
    expect(await requests.find(id)).toBeNull();
    expect(await queue.cancel(id)).toBe('unknown-request');
    const change = { id, expectedVersion: 1, name: 'A', document: {} };
    expect(await campuses.replace(change)).toEqual({ kind: 'unknown-campus' });
  });
}

function requestsKeepTheirPromises(stores: () => Stores): void {
  test('a request is solved: queued, taken, renewed with progress, stored with its plan', async () => {
    const { plans, requests, queue } = stores();
    const request = await enqueued(stores());
    expect(request).toMatchObject({ state: 'queued', attempts: 0, planId: null, limits });
    const { lease, request: taken } = await take(queue);
    expect(taken).toMatchObject({
      id: request.id,
      state: 'solving',
      attempts: 1,
      broughtPlan: null,
    });
    expect(await queue.take()).toBeNull();
    expect(await queue.renew(lease, progress)).toBe('held');
    expect(await requests.find(request.id)).toMatchObject({ state: 'solving', progress });
    const plan = planOf(request);
    expect(await queue.finish(lease, { kind: 'solved', ending: 'proven', plan })).toBe(true);
    const done = await requests.find(request.id);
    expect(done).toMatchObject({ state: 'done', ending: 'proven', planId: plan.id, progress });
    expect(done?.finishedAt).toBeInstanceOf(Date);
    expect(await plans.load(plan.id)).toMatchObject(plan);
    expect(await plans.listOf(request.campusId, 1)).toMatchObject([{ id: plan.id, seed: 7 }]);
    expect(await plans.listOf(request.campusId, 2)).toEqual([]);
  });

  test.each<[SolveClosing, object]>([
    [
      {
        kind: 'without-plan',
        ending: 'no-plan',
        conflict: [{ kind: 'commitment', id: 'C1', name: 'One a year' }],
      },
      { state: 'done', ending: 'no-plan', conflict: [{ id: 'C1' }], problem: null },
    ],
    [
      { kind: 'without-plan', ending: 'cancelled-without-plan', conflict: [] },
      { state: 'cancelled', ending: 'cancelled-without-plan' },
    ],
    [
      {
        kind: 'failed',
        problem: anError({ code: 'X', record: 'solve', field: '', value: '\u0000' }, ['p', 'r']),
      },
      { state: 'failed', ending: null, problem: { code: 'X', value: '\u0000' } },
    ],
  ])('a request closes without a plan: %j', async (closing, expected) => {
    const { requests, queue } = stores();
    const { id } = await enqueued(stores());
    const { lease } = await take(queue);
    expect(await queue.finish(lease, closing)).toBe(true);
    expect(await requests.find(id)).toMatchObject({ ...expected, planId: null });
  });

  test('requests are taken in the order in which they came', async () => {
    const { queue } = stores();
    const first = await enqueued(stores());
    const second = await enqueued(stores());
    const taken = [await take(queue), await take(queue)];
    expect(taken.map(({ request }) => request.id)).toEqual([first.id, second.id]);
    for (const { lease } of taken) await closeUnsolved(queue, lease);
  });

  test('a waiting request is cancelled at once and no worker sees it', async () => {
    const { requests, queue } = stores();
    const { id } = await enqueued(stores());
    expect(await queue.cancel(id)).toBe('cancelled');
    expect(await queue.take()).toBeNull();
    expect(await requests.find(id)).toMatchObject({ state: 'cancelled', cancelWanted: true });
    expect(await queue.cancel(id)).toBe('already-final');
  });

  test('the worker of a running request hears of the wish to cancel, and may store its best plan', async () => {
    const { requests, queue } = stores();
    const request = await enqueued(stores());
    const { lease } = await take(queue);
    expect(await queue.cancel(request.id)).toBe('cancel-wanted');
    expect(await queue.renew(lease, null)).toBe('cancel-wanted');
    const plan = { ...planOf(request), ending: 'cancelled' as const };
    expect(await queue.finish(lease, { kind: 'solved', ending: 'cancelled', plan })).toBe(true);
    expect(await requests.find(request.id)).toMatchObject({ state: 'cancelled', planId: plan.id });
  });

  test('a request given back waits again and the attempt does not count', async () => {
    const { requests, queue } = stores();
    const { id } = await enqueued(stores());
    const { lease } = await take(queue);
    await queue.renew(lease, progress);
    expect(await queue.giveBack(lease)).toBe(true);
    expect(await requests.find(id)).toMatchObject({ state: 'queued', attempts: 0, progress: null });
    expect(await queue.renew(lease, null)).toBe('lost');
    const again = await take(queue);
    expect(again.request).toMatchObject({ id, attempts: 1 });
    await closeUnsolved(queue, again.lease);
  });
}

function leasesKeepTheirPromises(stores: () => Stores): void {
  test('a renewed lease is left alone; a lapsed one frees the request', async () => {
    const { requests, queue } = stores();
    const { id } = await enqueued(stores());
    const { lease } = await take(queue);
    expect(await queue.recover(60_000)).toEqual([]);
    await pause(30);
    expect(await queue.recover(10)).toEqual([{ requestId: id, became: 'queued' }]);
    expect(await requests.find(id)).toMatchObject({ state: 'queued', attempts: 1 });
    expect(await queue.renew(lease, null)).toBe('lost');
    await closeUnsolved(queue, (await take(queue)).lease);
  });

  test('who lost the lease stores nothing, not even when nobody has taken it over', async () => {
    const { plans, requests, queue } = stores();
    const request = await enqueued(stores());
    const { lease: lost } = await take(queue);
    await pause(30);
    await queue.recover(10);
    const solved = (plan: NewPlan): SolveClosing => ({ kind: 'solved', ending: 'proven', plan });
    expect(await queue.finish(lost, solved(planOf(request)))).toBe(false);
    const { lease } = await take(queue);
    expect(await queue.finish(lost, solved(planOf(request)))).toBe(false);
    expect(await queue.giveBack(lost)).toBe(false);
    const plan = planOf(request);
    expect(await queue.finish(lease, solved(plan))).toBe(true);
    expect(await queue.finish(lease, solved(planOf(request)))).toBe(false);
    expect(await plans.listOf(request.campusId)).toMatchObject([{ id: plan.id }]);
    expect(await requests.find(request.id)).toMatchObject({ state: 'done', planId: plan.id });
  });

  test('a request whose worker dies every time is failed with a problem that says so', async () => {
    const { requests, queue } = stores();
    const { id } = await enqueued(stores());
    const became: (string | undefined)[] = [];
    for (let attempt = 1; attempt <= mostAttempts; attempt += 1) {
      await take(queue);
      await pause(30);
      became.push((await queue.recover(10))[0]?.became);
    }
    expect(became).toEqual(['queued', 'queued', 'failed']);
    expect(await queue.take()).toBeNull();
    expect(await requests.find(id)).toMatchObject({
      state: 'failed',
      problem: { code: 'solver-lost' },
    });
  });

  test('a request that was to be cancelled is not solved again after its worker died', async () => {
    const { requests, queue } = stores();
    const { id } = await enqueued(stores());
    await take(queue);
    await queue.cancel(id);
    await pause(30);
    expect(await queue.recover(10)).toEqual([{ requestId: id, became: 'cancelled' }]);
    expect(await requests.find(id)).toMatchObject({ state: 'cancelled' });
    expect(await queue.take()).toBeNull();
  });

  test('of many workers and sweeps at once, each request goes to one', async () => {
    const { queue } = stores();
    const wanted = [];
    for (let n = 0; n < 5; n += 1) wanted.push((await enqueued(stores())).id);
    const takings = await Promise.all(Array.from({ length: 12 }, () => queue.take()));
    const taken = takings.filter((taking) => taking !== null);
    expect(taken.map(({ request }) => request.id).sort()).toEqual([...wanted].sort());
    await pause(30);
    const sweeps = await Promise.all([queue.recover(10), queue.recover(10), queue.recover(10)]);
    expect(
      sweeps
        .flat()
        .map(({ requestId }) => requestId)
        .sort(),
    ).toEqual([...wanted].sort());
    for (let n = 0; n < 5; n += 1) await closeUnsolved(queue, (await take(queue)).lease);
  });
}

const progress: SolveProgress = {
  elapsedSeconds: 1.5,
  bestObjective: 2868,
  bound: 2966,
  gap: 0.034,
  tier: 'benefit',
  message: 'improving the plan',
};

async function enqueued({ campuses, queue }: Stores): Promise<SolveRequest> {
  const campus = await campuses.add({ name: 'Tamarack Vale', document: { v: 1 } });
  return queue.enqueue({ campusId: campus.id, campusVersion: 1, seed: 7, limits });
}

async function take(queue: SolveQueue): Promise<TakenSolve> {
  const taken = await queue.take();
  if (taken === null) throw new Error('nothing waits in the queue');
  return taken;
}

async function closeUnsolved(queue: SolveQueue, lease: SolveLease): Promise<void> {
  await queue.finish(lease, {
    kind: 'without-plan',
    ending: 'time-limit-without-plan',
    conflict: [],
  });
}

function planOf({ campusId, campusVersion, seed }: SolveRequest): NewPlan {
  return {
    ...{ id: randomUUID(), campusId, campusVersion, seed, limits },
    solverVersion: 'test',
    ending: 'proven',
    origin: 'solved',
    plan: { sites: ['TVU-14'] },
    overview: { headline: 'TVU-14' },
  };
}
