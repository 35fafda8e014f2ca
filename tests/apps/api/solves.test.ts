import { randomUUID } from 'node:crypto';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { solveReply } from '#contracts/http/solves.js';
import { OVERVIEW_FORM } from '#planning/overview-document.js';
import type { NewPlan } from '#planning/ports/plan-store.js';
import type { SolveProgress } from '#planning/solve-request.js';
import { testApi } from '../../support/api.js';

let api: Awaited<ReturnType<typeof testApi>>;
let campusId: string;
beforeEach(async () => {
  api = await testApi();
  campusId = (await api.campuses.add({ name: 'TVU', document: { name: 'TVU' } })).id;
});
afterEach(() => api.close());

const wish = (body: object) =>
  api.ask({ method: 'POST', url: `/api/campuses/${campusId}/solves`, body });

test('a solve is queued with defaults that are told', async () => {
  const queued = await wish({});
  expect(queued).toMatchObject({
    status: 202,
    body: { state: 'queued', seed: 1, campusVersion: 1, limits: { seconds: 60, work: null } },
  });
  expect(queued.headers['location']).toBe(`/api/solves/${queued.body.id}`);
  expect(solveReply.parse(queued.body)).toEqual(queued.body);
  const list = await api.ask({ url: `/api/campuses/${campusId}/solves` });
  expect(list.body.solves).toEqual([queued.body]);
});

test.each<[object, string]>([
  [{ seconds: 0 }, 'seconds'],
  [{ seconds: 4 * 60 * 60 + 1 }, 'seconds'],
  [{ gap: 1.5 }, 'gap'],
  [{ seed: 2 ** 31 }, 'seed'],
  [{ campusVersion: 0 }, 'campusVersion'],
  [{ minutes: 3 }, ''],
])('limits that are not as documented are refused: %j', async (body, field) => {
  const refused = await wish(body);
  expect(refused).toMatchObject({ status: 400, body: { code: 'request-invalid' } });
  expect(refused.body.problems.map((problem: { field: string }) => problem.field)).toEqual([field]);
});

test('a solve of a version that is not there is refused', async () => {
  expect(await wish({ campusVersion: 2 })).toMatchObject({ body: { code: 'unknown-campus' } });
});

test('a waiting solve is cancelled once', async () => {
  const { id } = (await wish({})).body;
  const cancel = () => api.ask({ method: 'POST', url: `/api/solves/${id}/cancel` });
  expect(await cancel()).toMatchObject({ status: 202, body: { state: 'cancelled' } });
  expect(await cancel()).toMatchObject({ status: 409, body: { code: 'solve-final' } });
});

const progress: SolveProgress = {
  elapsedSeconds: 2,
  bestObjective: 2868,
  bound: 2966,
  gap: 0.034,
  tier: 'benefit',
  message: '',
};

async function solved(changed: Partial<NewPlan> = {}): Promise<{ solveId: string; plan: NewPlan }> {
  const solveId = (await wish({})).body.id;
  const { lease, request } = (await api.queue.take())!;
  const { campusVersion, limits, seed } = request;
  const plan: NewPlan = {
    ...{ id: randomUUID(), campusId, campusVersion, seed, limits },
    ...{ ending: 'proven', origin: 'solved', solverVersion: 'test' },
    plan: { sites: ['TVU-14'] },
    overview: { form: OVERVIEW_FORM, headline: { nextSite: 'TVU-14' } },
    ...changed,
  };
  await api.queue.renew(lease, progress);
  await api.queue.finish(lease, { kind: 'solved', ending: 'proven', plan });
  return { solveId, plan };
}

test('a plan is read, shown, verified and written', async () => {
  const { plan } = await solved();
  const url = `/api/plans/${plan.id}`;
  const read = await api.ask({ url });
  expect(read.body).toMatchObject({ id: plan.id, ending: 'proven', file: plan.plan });
  expect((await api.ask({ url: `${url}/overview` })).body).toEqual(plan.overview);
  const verdict = await api.ask({ method: 'POST', url: `${url}/verify` });
  expect(verdict).toMatchObject({ status: 200, body: { verified: true, breaches: [] } });
  const brief = await api.ask({ url: `${url}/documents/administration-brief.pdf` });
  expect(brief).toMatchObject({ status: 200, headers: { 'content-type': 'application/pdf' } });
  expect(brief.body).toBe('%PDF-1.7 letter');
  const { documents } = (await api.ask({ url: `${url}/documents` })).body;
  expect(documents).toMatchObject([{ kind: 'administration-brief', site: null }]);
  const onA4 = await api.ask({ url: `${documents[0].path}?paper=a4` });
  expect(onA4.body).toBe('%PDF-1.7 a4');
  const list = await api.ask({ url: `/api/campuses/${campusId}/plans` });
  expect(list.body.plans).toMatchObject([{ id: plan.id }]);
});

test('a plan that an earlier program kept is shown by an overview worked out anew from it', async () => {
  const { plan } = await solved({ overview: { headline: { nextSite: 'TVU-14' } } });
  const { body } = await api.ask({ url: `/api/plans/${plan.id}/overview` });
  expect(body).toEqual({ form: OVERVIEW_FORM, workedOutFrom: plan.plan });
});

test('plans and documents that are not there are said to be not there', async () => {
  const url = `/api/plans/${randomUUID()}`;
  const missing = { status: 404, body: { code: 'unknown-plan' } };
  expect(await api.ask({ url })).toMatchObject(missing);
  expect(await api.ask({ url: `${url}/overview` })).toMatchObject(missing);
  expect(await api.ask({ method: 'POST', url: `${url}/verify` })).toMatchObject(missing);
  const brief = `${url}/documents/administration-brief.pdf`;
  expect(await api.ask({ url: brief })).toMatchObject(missing);
  expect(await api.ask({ url: `${url}/documents` })).toMatchObject(missing);
});

test('a document that a plan does not have is told apart from a name that is none', async () => {
  const { plan } = await solved();
  const url = `/api/plans/${plan.id}/documents`;
  expect(await api.ask({ url: `${url}/secrets.pdf` })).toMatchObject({
    status: 404,
    body: { code: 'unknown-document' },
  });
  expect(await api.ask({ url: `${url}/..secrets` })).toMatchObject({ status: 400 });
  const folio = await api.ask({ url: `${url}/administration-brief.pdf?paper=folio` });
  expect(folio).toMatchObject({ status: 400 });
});

/** The `solve` events of a stream that ends by itself. */
function eventsIn(stream: string): { state: string; progress: unknown; planId: unknown }[] {
  return stream
    .split('\n')
    .filter((line) => line.startsWith('data: '))
    .map((line) => JSON.parse(line.slice(6)));
}

test('a solve is followed by events until its final state', async () => {
  const { id } = (await wish({})).body;
  const following = api.app.inject({ url: `/api/solves/${id}/events` });
  const pause = () => new Promise((resolve) => setTimeout(resolve, 700));
  await pause();
  const { lease } = (await api.queue.take())!;
  await api.queue.renew(lease, progress);
  await pause();
  await api.queue.finish(lease, { kind: 'without-plan', ending: 'no-plan', conflict: [] });
  const { headers, body } = await following;
  expect(headers['content-type']).toContain('text/event-stream');
  expect(body).toContain('event: solve');
  expect(eventsIn(body).map(({ state }) => state)).toEqual(['queued', 'solving', 'done']);
  expect(eventsIn(body)[1]!.progress).toEqual(progress);
});

test('the events of a solve that has ended tell its end at once', async () => {
  const { plan, solveId } = await solved();
  const { body } = await api.app.inject({ url: `/api/solves/${solveId}/events` });
  expect(eventsIn(body)).toMatchObject([{ state: 'done', planId: plan.id }]);
  const none = await api.ask({ url: `/api/solves/${randomUUID()}/events` });
  expect(none).toMatchObject({ status: 404, body: { code: 'unknown-solve' } });
});
