import { randomUUID } from 'node:crypto';
import { expect, test, vi } from 'vitest';
import { defaultLeaseTiming } from '#planning/lease-timing.js';
import type { Explaining } from '#planning/ports/explaining.js';
import { serveExplanations } from '#planning/use-cases/serve-explanations.js';
import { memoryStore } from '../support/planning/memory-store.js';

const timing = { ...defaultLeaseTiming, renewEvery: 15 };

async function served(explaining: Explaining, of: 'plan' | 'campus' = 'plan') {
  const store = memoryStore();
  const { id: campusId } = await store.campuses.add({ name: 'TVU', document: { of: 'campus' } });
  const limits = { seconds: 1, work: null, gap: null };
  await store.queue.enqueue({ campusId, campusVersion: 1, seed: 1, limits });
  const { lease } = (await store.queue.take())!;
  const planId = randomUUID();
  const plan = {
    ...{ id: planId, campusId, campusVersion: 1, seed: 1, limits, solverVersion: 'test' },
    ...{ ending: 'proven' as const, origin: 'solved' as const, plan: { of: 'plan' }, overview: {} },
  };
  await store.queue.finish(lease, { kind: 'solved', ending: 'proven', plan });
  const stopping = new AbortController();
  const asked = {
    id: randomUUID(),
    about: of === 'plan' ? { planId } : { campusId, campusVersion: 1 },
    question: { kind: 'limits' },
    seconds: 3,
  };
  await store.explanations.add(asked);
  const working = serveExplanations(
    { ...store, explaining },
    { timing, stopping: stopping.signal, pollEvery: 5, onError: console.error },
  );
  const load = async () => (await store.explanations.load(asked.id))!;
  const end = async () => {
    stopping.abort();
    await working;
  };
  return { load, end };
}

test('a question is answered from its plan and campus, with progress on the way', async () => {
  let seen: unknown;
  const { load, end } = await served({
    explain: async (job, { onProgress }) => {
      seen = job;
      onProgress({ message: 'Half way', share: 0.5 });
      await new Promise((resolve) => setTimeout(resolve, 60));
      return { headline: 'It lasts.' };
    },
  });
  await vi.waitFor(async () => expect((await load()).progress?.message).toBe('Half way'));
  await vi.waitFor(async () => expect((await load()).state).toBe('done'));
  expect(seen).toEqual({
    ...{ campus: { of: 'campus' }, plan: { of: 'plan' } },
    ...{ question: { kind: 'limits' }, seconds: 3 },
  });
  expect(await load()).toMatchObject({ answer: { headline: 'It lasts.' } });
  await end();
});

test('a question about a campus is answered without a plan', async () => {
  let seen: unknown;
  const explain = async (job: unknown) => {
    seen = job;
    return { headline: 'No plan is possible.' };
  };
  const { load, end } = await served({ explain }, 'campus');
  await vi.waitFor(async () => expect((await load()).state).toBe('done'));
  expect(seen).toMatchObject({ campus: { of: 'campus' }, plan: null });
  await end();
});

test('a defect closes the question with a problem', async () => {
  const { load, end } = await served({ explain: () => Promise.reject(new Error('no such tier')) });
  await vi.waitFor(async () => expect((await load()).state).toBe('failed'));
  expect((await load()).problem?.problem).toContain('no such tier');
  await end();
});

test('an orderly stop gives the question back', async () => {
  const { load, end } = await served({
    explain: (_, { signal }) =>
      new Promise((_resolve, reject) =>
        signal.addEventListener('abort', () => reject(new Error('called off'))),
      ),
  });
  await vi.waitFor(async () => expect((await load()).state).toBe('working'));
  await end();
  expect(await load()).toMatchObject({ state: 'queued', attempts: 0 });
});
