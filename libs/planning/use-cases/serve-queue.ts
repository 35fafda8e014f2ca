import { pause } from './pause.js';
import { LeaseKeeper, type KeepLeaseOptions } from './keep-lease.js';
import { runSolveJob, type RunOutcome, type RunSolvePorts } from './run-solve-job.js';

export interface ServeQueueOptions extends KeepLeaseOptions {
  /** Milliseconds to wait when the queue is empty or the store away. */
  readonly pollEvery: number;
  readonly onOutcome: (requestId: string, outcome: RunOutcome) => void;
}

/** Takes one request after another until the worker has to stop. Errors of the store are waited out. */
export async function serveQueue(ports: RunSolvePorts, options: ServeQueueOptions): Promise<void> {
  while (!options.stopping.aborted) {
    const worked = await serveOne(ports, options);
    if (!worked) await pause(options.pollEvery, options.stopping);
  }
}

/** False when there was nothing to do or the store could not be reached. */
async function serveOne(ports: RunSolvePorts, options: ServeQueueOptions): Promise<boolean> {
  try {
    const taken = await ports.queue.take();
    if (taken === null) return false;
    const keeper = new LeaseKeeper(ports.queue, taken.lease, options);
    try {
      options.onOutcome(taken.request.id, await runSolveJob(ports, taken, keeper));
    } finally {
      await keeper.stop();
    }
    return true;
  } catch (error) {
    options.onError(error);
    return false;
  }
}
