import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { decisionReply } from '#contracts/http/decisions.js';
import { testApi } from '../../support/api.js';

let api: Awaited<ReturnType<typeof testApi>>;
let campusId: string;
const planId = randomUUID();

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

const decision = {
  ...{ site: 'TVU-19', year: 'FY28', verdict: 'approved', decidedBy: 'Landscape committee' },
  ...{ reason: 'Uses the reunion gift before it lapses.', dissent: '' },
};
const record = (plan: string, body: object) =>
  api.ask({ method: 'POST', url: `/api/plans/${plan}/decisions`, body });

test('a decision is kept with who, why and who disagreed', async () => {
  const recorded = await record(planId, decision);
  expect(recorded).toMatchObject({ status: 201, body: { ...decision, planId, campusId } });
  expect(decisionReply.parse(recorded.body)).toEqual(recorded.body);
  const dissent = 'Grounds: snow storage.';
  await record(planId, { ...decision, verdict: 'put off', dissent });
  const { body } = await api.ask({ url: `/api/campuses/${campusId}/decisions` });
  expect(body.decisions).toMatchObject([{ verdict: 'put off', dissent }, { verdict: 'approved' }]);
});

test.each([
  [{ ...decision, decidedBy: ' ' }, 'decidedBy'],
  [{ ...decision, reason: '' }, 'reason'],
  [{ ...decision, verdict: 'maybe' }, 'verdict'],
])('an approval without a name or a reason is refused: %j', async (body, field) => {
  const refused = await record(planId, body);
  expect(refused).toMatchObject({ status: 400, body: { problems: [{ field }] } });
});

test('a decision on a plan that is not there is refused', async () => {
  expect(await record(randomUUID(), decision)).toMatchObject({ body: { code: 'unknown-plan' } });
});
