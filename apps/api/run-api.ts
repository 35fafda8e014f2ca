import { openStore } from '#persistence/open-store.js';
import { defaultLeaseTiming, type LeaseTiming } from '#planning/lease-timing.js';
import type { CampusReader } from '#planning/ports/campus-reader.js';
import type { DocumentWriter } from '#planning/ports/document-writer.js';
import type { Exchange } from '#planning/ports/exchange.js';
import type { PlanChecker } from '#planning/ports/plan-checker.js';
import type { PlanOverview } from '#planning/ports/plan-overview.js';
import { watchLeases } from '#planning/use-cases/watch-leases.js';
import { createApi } from './create-api.js';
import { freePort } from './free-port.js';

export interface ApiAdapters {
  readonly reader: CampusReader;
  readonly checker: PlanChecker;
  readonly overview: PlanOverview;
  readonly writer: DocumentWriter;
  readonly exchange: Exchange;
}

export interface RunApiOptions {
  readonly databaseUrl: string;
  readonly host: string;
  /** Where to listen; the next free port when it is taken. */
  readonly port: number;
  readonly pageFolder: string;
  readonly stopping: AbortSignal;
  readonly timing?: LeaseTiming;
  readonly onListening: (port: number) => void;
}

const localHosts = new Set(['127.0.0.1', '::1', 'localhost']);

/** Serves the api and the page, and watches the leases of the workers, until told to stop. */
export async function runApi(adapters: ApiAdapters, options: RunApiOptions): Promise<void> {
  const { host, pageFolder, stopping, timing = defaultLeaseTiming } = options;
  const store = await openStore(options.databaseUrl, logError);
  const isLocalOnly = localHosts.has(host);
  const api = await createApi({ ...store, ...adapters }, { isLocalOnly, pageFolder });
  const port = await freePort(options.port, host);
  await api.listen(port, host);
  options.onListening(port);
  await watchLeases(store.queue, {
    timing,
    stopping,
    onError: logError,
    onRecovered: ({ requestId, became }) => {
      console.error(`solve ${requestId}: its worker is gone, now ${became}`);
    },
  });
  await api.close();
  await store.close();
}

function logError(error: unknown): void {
  console.error(`api: ${error instanceof Error ? error.message : String(error)}`);
}
