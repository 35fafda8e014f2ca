import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { freePort } from '#apps/api/free-port.js';
import { openStore, type OpenStore } from '#persistence/open-store.js';
import { databasesUnderTest, type OpenDatabase } from '../support/databases.js';
import { killHard, programs, startChild, type TestChild } from '../support/processes/children.js';

const kills = 20;
/** Long enough for several kills to fall into the middle of a solve. */
const solveMilliseconds = 600;
const patience = 110_000;

/**
 * kill -9 of the store, the api and the workers while campuses are written and solves run. The
 * embedded store runs in its own process here, as in the program; a server is never killed by us.
 */
describe.each(databasesUnderTest())('killed processes over the $name', ({ name, open }) => {
  const folder = mkdtempSync(join(tmpdir(), 'campus-plan-kill-'));
  const isEmbedded = name === 'embedded store';
  let database: OpenDatabase | undefined;
  let api: TestChild;
  let address: string;
  let killable: readonly TestChild[];
  let started: readonly TestChild[] = [];
  let store: OpenStore;

  beforeAll(async () => {
    const ownStore = isEmbedded ? startChild(programs.store, { args: [folder] }) : undefined;
    database = ownStore ? undefined : await open();
    const url = database?.url ?? (await ownStore!.ready<{ url: string }>()).url;
    store = await openStore(url, () => undefined);
    const port = await freePort(3_300, '127.0.0.1');
    address = `http://127.0.0.1:${port}/api`;
    const env = { DATABASE_URL: url, PORT: String(port) };
    api = startChild(programs.api, { env });
    const workers = [startChild(programs.solver, { env }), startChild(programs.solver, { env })];
    killable = [...workers, api, ...(ownStore ? [ownStore] : [])];
    started = [...(ownStore ? [ownStore] : []), api, ...workers];
    await Promise.all(started.map((child) => child.ready()));
  }, patience);

  afterAll(async () => {
    await store.close();
    for (const { child } of [...started].reverse()) await child.stop();
    await database?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  async function send<T>(method: string, path: string, body: unknown, etag = '') {
    const reply = await fetch(`${address}${path}`, {
      method,
      headers: { 'content-type': 'application/json', ...(etag && { 'if-match': etag }) },
      body: JSON.stringify(body),
    });
    if (!reply.ok) throw new Error(`${reply.status}`);
    return (await reply.json()) as T;
  }

  test(
    'nothing acknowledged is lost, every solve ends, and each has one plan',
    async () => {
      const saved: { id: string; version: number; document: object }[] = [];
      const queued: { id: string; campusId: string }[] = [];
      const writing = new AbortController();

      const writeOnce = async (n: number): Promise<void> => {
        const first = { name: `campus ${n}`, solveMilliseconds };
        const { campus } = await send<{ campus: { id: string } }>('POST', '/campuses', first);
        saved.push({ id: campus.id, version: 1, document: first });
        const second = { ...first, note: 'changed' };
        await send('PUT', `/campuses/${campus.id}`, second, '"1"');
        saved.push({ id: campus.id, version: 2, document: second });
        if (n % 4 !== 0) return;
        const solve = await send<{ id: string }>('POST', `/campuses/${campus.id}/solves`, {});
        queued.push({ id: solve.id, campusId: campus.id });
      };
      const write = async (): Promise<void> => {
        for (let n = 0; !writing.signal.aborted; n += 1) {
          await writeOnce(n).catch(() => new Promise((resolve) => setTimeout(resolve, 50)));
        }
      };

      const writers = [write(), write()];
      let killed = 0;
      for (let turn = 0; killed < kills; turn += 1) {
        await new Promise((resolve) => setTimeout(resolve, 300 + ((turn * 137) % 500)));
        if (killHard(killable[turn % killable.length]!)) killed += 1;
      }
      writing.abort();
      await Promise.all(writers);

      expect(saved.length).toBeGreaterThan(kills);
      expect(queued.length).toBeGreaterThan(3);
      for (const { id, version, document } of saved) {
        expect((await store.campuses.load(id, version))?.document).toEqual(document);
      }
      for (const { id, campusId } of queued) {
        await expect
          .poll(async () => (await store.requests.find(id))?.state, { timeout: 40_000 })
          .toBe('done');
        const request = await store.requests.find(id);
        const plans = await store.plans.listOf(campusId);
        expect(plans.map((plan) => plan.id)).toEqual([request?.planId]);
      }
    },
    patience,
  );
});
