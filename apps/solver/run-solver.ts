import { randomUUID } from 'node:crypto';
import { openStore } from '#persistence/open-store.js';
import { defaultLeaseTiming, type LeaseTiming } from '#planning/lease-timing.js';
import type { Explaining } from '#planning/ports/explaining.js';
import type { PlanChecker } from '#planning/ports/plan-checker.js';
import type { PlanOverview } from '#planning/ports/plan-overview.js';
import type { Solving } from '#planning/ports/solving.js';
import { serveExplanations } from '#planning/use-cases/serve-explanations.js';
import { serveQueue } from '#planning/use-cases/serve-queue.js';
import { watchLeases } from '#planning/use-cases/watch-leases.js';

export interface SolverAdapters {
  readonly solving: Solving;
  readonly checker: PlanChecker;
  readonly overview: PlanOverview;
  readonly explaining: Explaining;
}

export interface SolverOptions {
  readonly databaseUrl: string;
  /** Aborted when the worker should stop; a running solve goes back to the queue. */
  readonly stopping: AbortSignal;
  readonly timing?: LeaseTiming;
  readonly onReady?: () => void;
}

/** Milliseconds: how often an idle worker looks for work, and how often progress is written. */
const pollEvery = 500;
const progressEvery = 500;

/** Works on the queue and watches the leases of other workers, until told to stop. */
export async function runSolver(adapters: SolverAdapters, options: SolverOptions): Promise<void> {
  const { databaseUrl, stopping, timing = defaultLeaseTiming } = options;
  const store = await openStore(databaseUrl, logError);
  options.onReady?.();
  const shared = { timing, stopping, onError: logError };
  await Promise.all([
    serveQueue(
      { ...store, ...adapters, newPlanId: randomUUID },
      {
        ...shared,
        pollEvery,
        progressEvery,
        onOutcome: (id, outcome) => {
          if (outcome !== 'stored') console.error(`solve ${id}: ${outcome}`);
        },
      },
    ),
    serveExplanations({ ...store, ...adapters }, { ...shared, pollEvery }),
    watchLeases(store.queue, {
      ...shared,
      onRecovered: ({ requestId, became }) => {
        console.error(`solve ${requestId}: its worker is gone, now ${became}`);
      },
    }),
  ]);
  await store.close();
}

function logError(error: unknown): void {
  console.error(`solver: ${error instanceof Error ? error.message : String(error)}`);
}
