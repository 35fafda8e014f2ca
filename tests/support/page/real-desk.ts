import { randomUUID } from 'node:crypto';
import type { AddressInfo } from 'node:net';
import { resolve } from 'node:path';
import { campusReader } from '#apps/adapters/campus-reader.js';
import { computedOverview } from '#apps/adapters/computed-overview.js';
import { fileExchange } from '#apps/adapters/file-exchange.js';
import { documentWriter } from '#apps/adapters/plan-documents.js';
import { ruleChecker } from '#apps/adapters/rule-checker.js';
import { createApi } from '#apps/api/create-api.js';
import type { JsonDocument } from '#planning/json-document.js';
import type { Solving } from '#planning/ports/solving.js';
import { serveQueue } from '#planning/use-cases/serve-queue.js';
import { memoryStore } from '../planning/memory-store.js';

// From where the tests are run, as for seeds/: this file itself may be a built one.
const pageFolder = resolve('dist/web');
const limits = { seconds: 60, work: null, gap: null };
const timing = { renewEvery: 200, lapsesAfter: 30_000, sweepEvery: 10_000 };

/** A campus file with a plan file of it. */
export interface Prepared {
  readonly campus: JsonDocument;
  readonly plan: JsonDocument;
}

export interface RealDesk {
  readonly url: string;
  readonly store: ReturnType<typeof memoryStore>;
  readonly campusId: string;
  readonly planId: string;
  stop(): Promise<void>;
}

/**
 * The page on the real api, reader, checks and documents, over stores in memory; solves are answered
 * by `solving` as a worker would run it.
 */
export async function startDesk(prepared: Prepared | null, solving: Solving): Promise<RealDesk> {
  const store = memoryStore();
  const adapters = {
    reader: campusReader,
    checker: ruleChecker,
    overview: computedOverview,
    writer: documentWriter,
    exchange: fileExchange,
  };
  const api = await createApi({ ...store, ...adapters }, { isLocalOnly: true, pageFolder });
  await api.listen(0, '127.0.0.1');
  const held = prepared === null ? { campusId: '', planId: '' } : await hold(store, prepared);
  const stopping = new AbortController();
  const ports = { ...store, checker: ruleChecker, overview: computedOverview, solving };
  const served = serveQueue(
    { ...ports, newPlanId: randomUUID },
    {
      ...{ timing, pollEvery: 20, progressEvery: 50, stopping: stopping.signal },
      onOutcome: () => undefined,
      onError: (error) => {
        throw error;
      },
    },
  );
  const { port } = api.getHttpServer().address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${port}`,
    store,
    ...held,
    stop: async () => {
      stopping.abort();
      await served;
      await api.close();
    },
  };
}

/** Keeps a campus, and a plan of it as if it had just been solved. */
async function hold(store: ReturnType<typeof memoryStore>, { campus, plan }: Prepared) {
  const { id: campusId } = await store.campuses.add({
    name: String(campus['name']),
    document: campus,
  });
  const from = { campusId, campusVersion: 1, seed: 1, limits };
  await store.queue.enqueue(from);
  const { lease } = (await store.queue.take())!;
  const planId = randomUUID();
  const overview = await computedOverview.of(campus, plan);
  await store.queue.finish(lease, {
    kind: 'solved',
    ending: 'time-limit',
    plan: {
      ...from,
      id: planId,
      solverVersion: 'stored',
      ending: 'time-limit',
      origin: 'solved',
      plan,
      overview,
    },
  });
  return { campusId, planId };
}
