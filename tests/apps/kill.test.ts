import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { freePort } from '#apps/api/free-port.js';
import { openStore, type OpenStore } from '#persistence/open-store.js';
import { isFinal } from '#planning/solve-request.js';
import { databasesUnderTest, type OpenDatabase } from '../support/databases.js';
import { killHard, programs, startChild, type TestChild } from '../support/processes/children.js';

const kills = Number(process.env['KILLS'] ?? 12);
/** Long enough for several kills to fall into the middle of a solve. */
const solveMilliseconds = 800;
const patience = 280_000;

/**
 * kill -9 of the store, the api and the workers while campuses are written and solves run. The
 * embedded store runs in its own process here, as in the program; a server is never killed by us.
 */
describe.each(databasesUnderTest())('killed processes over the $name', ({ name, open }) => {
  const folder = mkdtempSync(join(tmpdir(), 'campus-plan-kill-'));
  const isEmbedded = name === 'embedded store';
  let database: OpenDatabase | undefined;
  let api: TestChild;
  let base: string;
  let workers: readonly TestChild[];
  let writingProcesses: readonly TestChild[];
  let started: readonly TestChild[] = [];
  let store: OpenStore;

  beforeAll(async () => {
    const ownStore = isEmbedded ? startChild(programs.store, { args: [folder] }) : undefined;
    database = ownStore ? undefined : await open();
    const url = database?.url ?? (await ownStore!.ready<{ url: string }>()).url;
    store = await openStore(url, () => undefined);
    const port = await freePort(3_300, '127.0.0.1');
    base = `http://127.0.0.1:${port}/api`;
    const env = { DATABASE_URL: url, PORT: String(port) };
    api = startChild(programs.api, { env });
    workers = [startChild(programs.solver, { env }), startChild(programs.solver, { env })];
    writingProcesses = [api, ...(ownStore ? [ownStore] : [])];
    started = [...(ownStore ? [ownStore] : []), api, ...workers];
    await Promise.all(started.map((child) => child.ready()));
  }, patience);

  afterAll(async () => {
    await store.close();
    for (const { child } of [...started].reverse()) await child.stop();
    await database?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  async function send<T>(address: string, body: unknown, etag?: string) {
    const [method = '', path = ''] = address.split(' ');
    const reply = await fetch(`${base}${path}`, {
      method,
      headers: {
        'content-type': 'application/json',
        ...(etag === undefined ? {} : { 'if-match': etag }),
      },
      body: JSON.stringify(body),
    });
    if (!reply.ok) throw new Error(`${reply.status}`);
    return (await reply.json()) as T;
  }

  /** Writes campuses and asks for solves until stopped, and remembers what was acknowledged. */
  class Writer {
    readonly saved: { id: string; version: number; document: object }[] = [];
    readonly queued: { id: string; campusId: string }[] = [];
    isStopped = false;

    async run(): Promise<void> {
      for (let n = 0; !this.isStopped; n += 1) {
        await this.#writeOnce(n).catch(() => pause(50));
      }
    }

    async #writeOnce(n: number): Promise<void> {
      const first = { name: `campus ${n}`, solveMilliseconds };
      const { campus } = await send<{ campus: { id: string } }>('POST /campuses', first);
      this.saved.push({ id: campus.id, version: 1, document: first });
      const second = { ...first, note: 'changed' };
      await send(`PUT /campuses/${campus.id}`, second, '"1"');
      this.saved.push({ id: campus.id, version: 2, document: second });
      if (await this.#isBusy()) return;
      const solve = await send<{ id: string }>(`POST /campuses/${campus.id}/solves`, {});
      this.queued.push({ id: solve.id, campusId: campus.id });
    }

    /** Two solves wait or run already. */
    async #isBusy(): Promise<boolean> {
      const newest = await Promise.all(this.queued.slice(-2).map(({ id }) => requestOf(id)));
      return newest.filter((request) => request && !isFinal(request.state)).length === 2;
    }
  }

  const requestOf = (id: string) => store.requests.find(id);

  /** Waits until a worker is in the middle of a solve, and kills that one. */
  async function killSolving(writer: Writer): Promise<void> {
    await expect
      .poll(async () => killIfSolving(writer), { timeout: patience, interval: 20 })
      .toBe(true);
  }

  async function killIfSolving({ queued }: Writer): Promise<boolean> {
    for (const { id } of queued.slice(-4)) {
      const request = await requestOf(id);
      // A third death would fail the request, as it should; here every solve is to end well.
      if (request && request.attempts > 1) continue;
      const [pid] = /\d+$/.exec(request?.progress?.message ?? '') ?? [];
      const worker = workers.find(({ child }) => String(child.pid) === pid);
      if (request?.state === 'solving' && worker) return killHard(worker);
    }
    return false;
  }

  /** Kills a process shortly after a write was acknowledged, so that the next is on its way. */
  async function killWriting(writer: Writer, target: TestChild): Promise<void> {
    const before = writer.saved.length;
    const isWriting = () => writer.saved.length > before && target.child.pid !== null;
    await expect.poll(isWriting, { timeout: patience, interval: 2 }).toBe(true);
    await pause(before % 23);
    killHard(target);
  }

  test(
    'nothing acknowledged is lost, every solve ends, and each has one plan',
    async () => {
      const writer = new Writer();
      const writing = Promise.all([writer.run(), writer.run()]);
      for (let n = 0; n < kills; n += 1) {
        const target = writingProcesses[Math.floor(n / 2) % writingProcesses.length];
        if (n % 2 === 1 && target) await killWriting(writer, target);
        else await killSolving(writer);
      }
      writer.isStopped = true;
      await writing;

      expect(writer.saved.length).toBeGreaterThan(kills);
      for (const { id, version, document } of writer.saved) {
        expect((await store.campuses.load(id, version))?.document).toEqual(document);
      }
      let retried = 0;
      for (const { id, campusId } of writer.queued) {
        await expect
          .poll(async () => (await requestOf(id))?.state, { timeout: patience })
          .toBe('done');
        const request = await requestOf(id);
        if (request && request.attempts > 1) retried += 1;
        const plans = await store.plans.listOf(campusId);
        expect(plans.map((plan) => plan.id)).toEqual([request?.planId]);
      }
      expect(retried).toBeGreaterThan(0);
    },
    patience,
  );
});

const pause = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds));
