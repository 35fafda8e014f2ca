import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { defaultLeaseTiming } from '#planning/lease-timing.js';
import { watchLeases } from '#planning/use-cases/watch-leases.js';
import { memoryStore } from '../support/planning/memory-store.js';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const limits = { seconds: 60, work: null, gap: null };

async function watched() {
  const { queue } = memoryStore();
  const wish = { campusId: 'campus', campusVersion: 1, seed: 1, limits };
  const { id } = await queue.enqueue(wish);
  const { lease } = (await queue.take())!;
  const stopping = new AbortController();
  const recovered: string[] = [];
  const store = { isAway: false };
  const orThrow = <T>(act: () => Promise<T>): Promise<T> =>
    store.isAway ? Promise.reject(new Error('store away')) : act();
  const watching = watchLeases(
    {
      ...queue,
      recover: (lapse) => orThrow(() => queue.recover(lapse)),
      ping: () => orThrow(queue.ping),
    },
    {
      timing: defaultLeaseTiming,
      stopping: stopping.signal,
      onRecovered: ({ requestId }) => recovered.push(requestId),
      onError: () => undefined,
    },
  );
  const stop = async () => {
    stopping.abort();
    await watching;
  };
  return { id, lease, queue, recovered, stop, store };
}

test('a dead worker is noticed within 15 seconds', async () => {
  const { id, recovered, stop } = await watched();
  await vi.advanceTimersByTimeAsync(11_000);
  expect(recovered).toEqual([]);
  await vi.advanceTimersByTimeAsync(4_000);
  expect(recovered).toEqual([id]);
  await stop();
});

test('after an outage of the store its workers get a whole lease of time to renew', async () => {
  const { lease, queue, recovered, stop, store } = await watched();
  store.isAway = true;
  await vi.advanceTimersByTimeAsync(20_000);
  store.isAway = false;
  await vi.advanceTimersByTimeAsync(4_000);
  expect(recovered).toEqual([]);
  expect(await queue.renew(lease, null)).toBe('held');
  await vi.advanceTimersByTimeAsync(10_000);
  expect(recovered).toEqual([]);
  await vi.advanceTimersByTimeAsync(5_000);
  expect(recovered).toHaveLength(1);
  await stop();
});
