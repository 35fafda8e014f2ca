import type { CampusStore } from '../ports/campus-store.js';
import type { SolveQueue } from '../ports/solve-queue.js';
import { longestSolveSeconds, type SolveLimits } from '../solve-limits.js';
import type { SolveRequest } from '../solve-request.js';

interface Ports {
  readonly campuses: CampusStore;
  readonly queue: SolveQueue;
}

export interface SolveWish {
  readonly campusId: string;
  /** Left out: the newest version. */
  readonly campusVersion?: number | undefined;
  readonly seed: number;
  readonly limits: SolveLimits;
}

export type RequestOutcome =
  { readonly kind: 'queued'; readonly request: SolveRequest } | { readonly kind: 'unknown-campus' };

/** Queues a solve of one saved version of a campus. */
export async function requestSolve(ports: Ports, wish: SolveWish): Promise<RequestOutcome> {
  assertLimits(wish.limits);
  const campus = await ports.campuses.load(wish.campusId, wish.campusVersion);
  if (campus === null) return { kind: 'unknown-campus' };
  const request = await ports.queue.enqueue({
    campusId: campus.id,
    campusVersion: campus.version,
    seed: wish.seed,
    limits: wish.limits,
  });
  return { kind: 'queued', request };
}

/** The edge (HTTP, command line) has refused such limits already; here they are a defect. */
function assertLimits({ seconds }: SolveLimits): void {
  if (!(seconds > 0 && seconds <= longestSolveSeconds)) {
    throw new RangeError(
      `a solve may take more than 0 and at most ${longestSolveSeconds} seconds, got ${seconds}`,
    );
  }
}
