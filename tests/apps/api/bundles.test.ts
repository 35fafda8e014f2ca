/** A campus bundle over the api: what it restores, on each database, with a worker that checks the plans. */
import { strToU8, unzipSync, zipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { campusReader } from '#apps/adapters/campus-reader.js';
import { computedOverview } from '#apps/adapters/computed-overview.js';
import { ruleChecker } from '#apps/adapters/rule-checker.js';
import { canonicalJson, digestOf } from '#contracts/canonical.js';
import { importAppliedReply, importPreviewReply } from '#contracts/http/imports.js';
import { solveReply } from '#contracts/http/solves.js';
import type { PlanFile } from '#contracts/plan-file.js';
import { openStore, type OpenStore } from '#persistence/open-store.js';
import type { Solving } from '#planning/ports/solving.js';
import { serveQueue } from '#planning/use-cases/serve-queue.js';
import { testApi } from '../../support/api.js';
import { smallCampus } from '../../support/cli/small-campus.js';
import { databasesUnderTest, type OpenDatabase } from '../../support/databases.js';
import { planDocument } from '../../support/page/small-desk.js';

const file = smallCampus();
const plan = planDocument(file, [
  ['S-1', 'edible', 2028],
  ['S-2', 'pollinator', 2030],
]);

/** A bundle of the small campus with one plan, changed as a test likes; its digests are made to fit. */
function bundleOf(change: (plan: PlanFile) => void = () => undefined, campus = file): Uint8Array {
  const changed = structuredClone(plan) as unknown as PlanFile;
  change(changed);
  const manifest = {
    ...{ format: 'campus-plan/bundle', formatVersion: 1 },
    campus: { file: 'campus.json', digest: digestOf(campus) },
    plans: [
      {
        ...{ name: 'autumn', file: 'plans/autumn.json', digest: digestOf(changed) },
        documents: { createdAt: campus.dataDate },
      },
    ],
  };
  const parts = { 'bundle.json': manifest, 'campus.json': campus, 'plans/autumn.json': changed };
  const text = ([name, part]: [string, object]) => [name, strToU8(JSON.stringify(part))] as const;
  return zipSync(Object.fromEntries(Object.entries(parts).map(text)));
}

const neverSolves: Solving = {
  solve: () => Promise.reject(new Error('a plan that was brought in is not solved')),
};

describe.each(databasesUnderTest())('a campus bundle over the api, on the $name', (kind) => {
  let database: OpenDatabase;
  let store: OpenStore;
  let api: Awaited<ReturnType<typeof testApi>>;
  const worker = new AbortController();
  let working: Promise<void>;
  beforeAll(async () => {
    database = await kind.open();
    store = await openStore(database.url, console.error);
    api = await testApi({ ...store, reader: campusReader, checker: ruleChecker });
    working = serveQueue(
      {
        ...{ ...store, solving: neverSolves, checker: ruleChecker, overview: computedOverview },
        newPlanId: () => '',
      },
      {
        ...{ timing: { renewEvery: 200, lapsesAfter: 30_000, sweepEvery: 10_000 } },
        ...{ pollEvery: 20, progressEvery: 50, stopping: worker.signal },
        onOutcome: () => undefined,
        onError: console.error,
      },
    );
  });
  afterAll(async () => {
    worker.abort();
    await working;
    await api.close();
    await store.close();
    await database.close();
  });

  /** A campus of its own for each test: the bundle's, or another state of it. */
  async function held(campus = file): Promise<string> {
    const added = await api.ask({ method: 'POST', url: '/api/campuses', body: campus });
    return `/api/campuses/${added.body.campus.id}`;
  }

  async function send(url: string, bytes: Uint8Array) {
    const headers = { 'content-type': 'application/octet-stream' };
    const payload = Buffer.from(bytes);
    const reply = await api.app.inject({ method: 'POST', url, headers, payload });
    return { status: reply.statusCode, body: JSON.parse(reply.body) };
  }

  /** The dry run, and what comes of applying it. */
  async function bring(campus: string, bytes: Uint8Array) {
    const shown = await send(`${campus}/imports`, bytes);
    expect(importPreviewReply.parse(shown.body)).toEqual(shown.body);
    const saved = await send(`${campus}/imports/${shown.body.token}/apply`, bytes);
    expect(importAppliedReply.parse(saved.body)).toEqual(saved.body);
    const ended = [];
    for (const { solveId } of saved.body.broughtPlans) ended.push(await end(solveId));
    return { report: shown.body.report, saved: saved.body, ended };
  }

  async function end(solveId: string) {
    const read = async () => (await api.ask({ url: `/api/solves/${solveId}` })).body;
    await expect.poll(async () => (await read()).finishedAt, { timeout: 20_000 }).not.toBeNull();
    const solve = await read();
    expect(solveReply.parse(solve)).toEqual(solve);
    return solve;
  }

  const plansOf = async (campus: string) => (await api.ask({ url: `${campus}/plans` })).body.plans;

  test('restores a campus and its plan, and given twice changes nothing more', async () => {
    const campus = await held(smallCampus((now) => (now.candidateSites[0]!.name = 'Since then')));
    const first = await bring(campus, bundleOf());
    expect(first.report).toMatchObject({
      ...{ canApply: true, counts: { changed: 1 } },
      plans: [{ name: 'autumn', outcome: 'new', problems: [] }],
    });
    expect(first.ended).toMatchObject([{ state: 'done', broughtPlan: 'autumn', campusVersion: 2 }]);
    expect(await plansOf(campus)).toMatchObject([
      {
        ...{ id: first.ended[0].planId, origin: 'bundle', campusVersion: 2, seed: 1 },
        ...{
          ending: 'time-limit',
          limits: { seconds: 1, work: null },
          solverVersion: 'none by hand',
        },
      },
    ]);
    const url = `/api/plans/${first.ended[0].planId}`;
    expect(canonicalJson((await api.ask({ url })).body.file)).toBe(canonicalJson(plan));
    expect((await api.ask({ url: `${url}/overview` })).body.headline.nextSite).toContain('S-1');
    const verdict = await api.ask({ method: 'POST', url: `${url}/verify` });
    expect(verdict.body).toEqual({ verified: true, breaches: [] });

    const again = await bring(campus, bundleOf());
    expect(again.report.plans).toEqual([{ name: 'autumn', outcome: 'unchanged', problems: [] }]);
    expect(again.saved).toMatchObject({ campusVersion: 2, broughtPlans: [] });
    expect(await plansOf(campus)).toHaveLength(1);
  });

  test('sent twice at once keeps its plan once', async () => {
    const campus = await held();
    const bytes = bundleOf();
    const { token } = (await send(`${campus}/imports`, bytes)).body;
    const both = await Promise.all(
      [1, 2].map(() => send(`${campus}/imports/${token}/apply`, bytes)),
    );
    const solves = both.flatMap(({ body }) => body.broughtPlans);
    const ended = await Promise.all(solves.map(({ solveId }) => end(solveId)));
    expect(new Set(ended.map(({ state }) => state))).toEqual(new Set(['done']));
    expect(await plansOf(campus)).toHaveLength(1);
  });

  test.each<[string, (changed: PlanFile) => void, RegExp]>([
    [
      'spends a cent that is not there',
      (changed) => (changed.plan.spending[0]!.dollars += 0.01),
      /does not pass the checks of its campus: .+\d/,
    ],
    [
      'claims to be proven and is not',
      (changed) => (changed.ending = 'proven'),
      /ends as proven, which its tiers do not bear out/,
    ],
  ])(
    'that holds a plan which %s restores the campus alone, and says why',
    async (_, change, why) => {
      const campus = await held(smallCampus((now) => (now.program = 'As it is now')));
      await bring(campus, bundleOf());
      const { ended, saved } = await bring(campus, bundleOf(change));
      expect(saved.campusVersion).toBe(2);
      expect(ended).toMatchObject([
        { state: 'failed', planId: null, problem: { code: 'PLAN-REFUSED', record: 'plan autumn' } },
      ]);
      expect(ended[0].problem.problem).toMatch(why);
      expect(await plansOf(campus)).toHaveLength(1);
      expect((await api.ask({ url: campus })).body.file.program).toBe(file.program);
    },
  );

  test('leaves out at once a plan of another state of the campus, or one that is no plan', async () => {
    const campus = await held();
    const other = smallCampus((changed) => (changed.program = 'Another program'));
    const elsewhere = await bring(campus, bundleOf(undefined, other));
    expect(elsewhere.report.plans).toMatchObject([
      { outcome: 'rejected', problems: [{ code: 'PLAN-OTHER-CAMPUS' }] },
    ]);
    const spoiled = bundleOf((changed) => (changed.tiers = 'none' as never));
    const { report, saved } = await bring(campus, spoiled);
    expect(report).toMatchObject({ canApply: true, plans: [{ outcome: 'rejected' }] });
    expect(report.plans[0].problems.length).toBeGreaterThan(0);
    expect(saved.broughtPlans).toEqual([]);
    expect(await plansOf(campus)).toEqual([]);
  });

  test('that the api wrote holds every plan of the campus as it stands, and comes back as it was', async () => {
    const campus = await held();
    await bring(campus, bundleOf());
    await bring(
      campus,
      bundleOf((changed) => (changed.solver.seed = 2)),
    );
    const written = await api.app.inject({ method: 'GET', url: `${campus}/exports/bundle` });
    const parts = Object.keys(unzipSync(written.rawPayload));
    expect(parts.filter((name) => name.startsWith('plans/'))).toHaveLength(2);
    const elsewhere = await held(smallCampus((now) => (now.program = 'On another machine')));
    const { ended } = await bring(elsewhere, written.rawPayload);
    expect(ended.map(({ state }) => state)).toEqual(['done', 'done']);
    expect((await plansOf(elsewhere)).map(({ seed }: { seed: number }) => seed).sort()).toEqual([
      1, 2,
    ]);
  });

  test('whose plan was solved by work and not by time states no seconds', async () => {
    const campus = await held();
    const worked = bundleOf((changed) => (changed.solver.limit = { kind: 'work', units: 40 }));
    const { ended } = await bring(campus, worked);
    expect(ended).toMatchObject([{ state: 'done', limits: { seconds: null, work: 40 } }]);
    expect(await plansOf(campus)).toMatchObject([{ limits: { seconds: null, work: 40 } }]);
  });
});
