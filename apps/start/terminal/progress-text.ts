import type { SolveRequest } from '#planning/solve-request.js';

/** One line about a solve under way: elapsed, best plan so far, gap. */
export function progressText({ progress, state, attempts }: SolveRequest): string {
  if (state === 'queued')
    return attempts === 0 ? 'waiting for the solver' : 'waiting to be retried';
  if (progress === null) return 'starting';
  const { bestObjective, elapsedSeconds, gap, tier } = progress;
  const best =
    bestObjective === null ? 'no plan yet' : `best plan so far ${compact(bestObjective)}`;
  const parts = [
    `${Math.floor(elapsedSeconds)} s`,
    tier === null ? best : `${best} (${tier})`,
    gap === null ? 'gap not known yet' : `gap ${(gap * 100).toFixed(1)} %`,
  ];
  return parts.join(', ');
}

/** Changes when there is something new to say: taken by a worker, first plan found. */
export function progressStage({ progress, state }: SolveRequest): string {
  const hasPlan = progress !== null && progress.bestObjective !== null;
  return `${state} ${hasPlan ? 'with' : 'without'} plan`;
}

function compact(value: number): string {
  return value.toLocaleString('en-US', { maximumFractionDigits: 1 });
}
