import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { explanationReply } from '#contracts/http/explanations.js';
import { testApi } from '../../support/api.js';

let api: Awaited<ReturnType<typeof testApi>>;
const planId = randomUUID();
let campusId: string;

beforeAll(async () => {
  api = await testApi();
  campusId = (await api.campuses.add({ name: 'TVU', document: { name: 'TVU' } })).id;
  const limits = { seconds: 1, work: null, gap: null };
  await api.queue.enqueue({ campusId, campusVersion: 1, seed: 1, limits });
  const { lease } = (await api.queue.take())!;
  const plan = {
    ...{ id: planId, campusId, campusVersion: 1, seed: 1, limits, solverVersion: 'test' },
    ...{ ending: 'proven' as const, origin: 'solved' as const, plan: {}, overview: {} },
  };
  await api.queue.finish(lease, { kind: 'solved', ending: 'proven', plan });
});
afterAll(() => api.close());

const ask = (plan: string, body: object) =>
  api.ask({ method: 'POST', url: `/api/plans/${plan}/explanations`, body });

test('a question is queued, and read with its answer once a worker has it', async () => {
  const question = { kind: 'why', site: 'TVU-14', year: 2030 };
  const asked = await ask(planId, { question });
  expect(asked).toMatchObject({ status: 202, body: { state: 'queued', question, seconds: 28 } });
  const { lease } = (await api.explanations.take(60_000))!;
  await api.explanations.finish(lease, { answer: { headline: 'It is barred.' } });
  const { body } = await api.ask({ url: `/api/explanations/${asked.body.id}` });
  expect(explanationReply.parse(body)).toMatchObject({
    ...{ state: 'done', answer: { headline: 'It is barred.' } },
  });
  const list = await api.ask({ url: `/api/plans/${planId}/explanations` });
  expect(list.body.explanations).toHaveLength(1);
});

test.each([
  [{ question: { kind: 'weather' } }],
  [{ question: { kind: 'why' } }],
  [{ question: { kind: 'limits' }, seconds: 0 }],
])('a question that is none is refused: %j', async (body) => {
  expect(await ask(planId, body)).toMatchObject({ status: 400 });
});

test('a campus without a plan is asked what cannot all be kept, in its newest version', async () => {
  const url = `/api/campuses/${campusId}/explanations`;
  const question = { kind: 'conflicts' };
  const asked = await api.ask({ method: 'POST', url, body: { question, seconds: 20 } });
  expect(asked).toMatchObject({
    status: 202,
    body: { state: 'queued', question, planId: null, campusId, campusVersion: 1 },
  });
  const { lease } = (await api.explanations.take(60_000))!;
  await api.explanations.finish(lease, { answer: { headline: 'No plan is possible.' } });
  const { explanations } = (await api.ask({ url })).body;
  expect(explanations.map((e: unknown) => explanationReply.parse(e).state)).toEqual(['done']);
  const ofPlan = await api.ask({ url: `/api/plans/${planId}/explanations` });
  expect(ofPlan.body.explanations).toHaveLength(1);
  const wrong = await api.ask({ method: 'POST', url, body: { question: { kind: 'limits' } } });
  expect(wrong.status).toBe(400);
  const gone = `/api/campuses/${randomUUID()}/explanations`;
  expect(await api.ask({ method: 'POST', url: gone, body: { question } })).toMatchObject({
    ...{ status: 404, body: { code: 'unknown-campus' } },
  });
});

test('a plan or a question that is not there is refused', async () => {
  const question = { kind: 'limits' };
  expect(await ask(randomUUID(), { question })).toMatchObject({ body: { code: 'unknown-plan' } });
  expect(await api.ask({ url: `/api/explanations/${randomUUID()}` })).toMatchObject({
    ...{ status: 404, body: { code: 'unknown-explanation' } },
  });
});
