import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openStore, type OpenStore } from '#persistence/open-store.js';
import { mostAttempts } from '#planning/lease-timing.js';
import { anError } from '#domain/problem.js';
import { databasesUnderTest, type OpenDatabase } from '../support/databases.js';

const LONG = 60_000;

describe.each(databasesUnderTest())('questions about plans on the $name', (kind) => {
  let database: OpenDatabase;
  let store: OpenStore;
  const planId = randomUUID();
  let campusId: string;
  beforeAll(async () => {
    database = await kind.open();
    store = await openStore(database.url, console.error);
    ({ id: campusId } = await store.campuses.add({ name: 'TVU', document: {} }));
    const limits = { seconds: 1, work: null, gap: null };
    await store.queue.enqueue({ campusId, campusVersion: 1, seed: 1, limits });
    const { lease } = (await store.queue.take())!;
    const plan = {
      ...{ id: planId, campusId, campusVersion: 1, seed: 1, limits, solverVersion: 'test' },
      ...{ ending: 'proven' as const, origin: 'solved' as const, plan: {}, overview: {} },
    };
    await store.queue.finish(lease, { kind: 'solved', ending: 'proven', plan });
  });
  afterAll(async () => {
    await store.close();
    await database.close();
  });
  const ask = () =>
    store.explanations.add({
      id: randomUUID(),
      about: { planId },
      question: { kind: 'limits' },
      seconds: 5,
    });

  test('a question is taken once, tells its progress, and keeps its answer', async () => {
    const { id } = await ask();
    const [first, second] = await Promise.all([
      store.explanations.take(LONG),
      store.explanations.take(LONG),
    ]);
    const taken = first ?? second;
    expect([first, second].filter((t) => t !== null)).toHaveLength(1);
    expect(taken?.explanation).toMatchObject({ id, state: 'working', attempts: 1 });
    const { lease } = taken!;
    const progress = { message: 'Half way', share: 0.5 };
    expect(await store.explanations.renew(lease, progress)).toBe(true);
    expect(await store.explanations.load(id)).toMatchObject({ progress });
    expect(await store.explanations.finish(lease, { answer: { headline: 'It lasts.' } })).toBe(
      true,
    );
    expect(await store.explanations.load(id)).toMatchObject({
      ...{ state: 'done', answer: { headline: 'It lasts.' }, problem: null },
    });
    expect(await store.explanations.renew(lease, null)).toBe(false);
  });

  test('a question about a version of a campus is kept apart from those about plans', async () => {
    const about = { campusId, campusVersion: 1 };
    const asked = { id: randomUUID(), about, question: { kind: 'conflicts' }, seconds: 5 };
    await store.explanations.add(asked);
    const taken = (await store.explanations.take(LONG))!;
    expect(taken.explanation.about).toEqual(about);
    await store.explanations.finish(taken.lease, { answer: {} });
    const idsOf = async (list: Promise<readonly { id: string }[]>) => (await list).map((e) => e.id);
    expect(await idsOf(store.explanations.listOfCampus(campusId))).toEqual([asked.id]);
    expect(await idsOf(store.explanations.listOf(planId))).not.toContain(asked.id);
    const none = { ...asked, id: randomUUID(), about: { campusId, campusVersion: 7 } };
    await expect(store.explanations.add(none)).rejects.toThrow();
  });

  test('a lapsed lease goes to another worker, and the first can no longer answer', async () => {
    const { id } = await ask();
    const gone = (await store.explanations.take(LONG))!;
    const next = (await store.explanations.take(-1))!;
    expect(next.explanation).toMatchObject({ id, attempts: 2 });
    expect(await store.explanations.finish(gone.lease, { answer: {} })).toBe(false);
    expect(await store.explanations.giveBack(next.lease)).toBe(true);
    expect(await store.explanations.load(id)).toMatchObject({ state: 'queued', attempts: 1 });
    const again = (await store.explanations.take(LONG))!;
    const problem = anError({ code: 'x', record: 'explanation', field: '' }, ['It failed.', '-']);
    await store.explanations.finish(again.lease, { problem });
    expect(await store.explanations.load(id)).toMatchObject({ state: 'failed', problem });
  });

  test('a question that took down its workers too often is failed and passed over', async () => {
    const { id } = await ask();
    for (let i = 0; i < mostAttempts; i++) expect(await store.explanations.take(-1)).not.toBeNull();
    expect(await store.explanations.take(-1)).toBeNull();
    expect(await store.explanations.load(id)).toMatchObject({ state: 'failed' });
    expect((await store.explanations.listOf(planId)).map((e) => e.id)[0]).toBe(id);
  });
});
