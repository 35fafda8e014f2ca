import type { LeaseTiming } from '../lease-timing.js';
import type { RecoveredSolve, SolveQueue } from '../ports/solve-queue.js';
import { pause } from './pause.js';

export interface WatchLeasesOptions {
  readonly timing: LeaseTiming;
  readonly stopping: AbortSignal;
  readonly onRecovered: (recovered: RecoveredSolve) => void;
  readonly onError: (error: unknown) => void;
}

/**
 * Looks for lost leases until stopped. While the store is away no worker can renew, so after an
 * outage the workers get one full lease of time before any of them is taken for dead.
 */
export async function watchLeases(queue: SolveQueue, options: WatchLeasesOptions): Promise<void> {
  const { timing, stopping } = options;
  let blindUntil = 0;
  while (!stopping.aborted) {
    try {
      if (Date.now() < blindUntil) await queue.ping();
      else (await queue.recover(timing.lapsesAfter)).forEach(options.onRecovered);
    } catch (error) {
      blindUntil = Date.now() + timing.lapsesAfter;
      options.onError(error);
    }
    await pause(timing.sweepEvery, stopping);
  }
}
