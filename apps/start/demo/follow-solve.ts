import type { SolveRequestStore } from '#planning/ports/solve-request-store.js';
import { isFinal, type SolveRequest } from '#planning/solve-request.js';
import { pause } from '#planning/use-cases/pause.js';

const lookEvery = 500;

/** Reports a solve until its final state. Null: told to stop before. */
export async function followSolve(
  requests: SolveRequestStore,
  id: string,
  options: { stopping: AbortSignal; onChange: (request: SolveRequest) => void },
): Promise<SolveRequest | null> {
  while (!options.stopping.aborted) {
    const request = await requests.find(id);
    if (request === null) throw new Error(`solve ${id} is gone`);
    if (isFinal(request.state)) return request;
    options.onChange(request);
    await pause(lookEvery, options.stopping);
  }
  return null;
}
