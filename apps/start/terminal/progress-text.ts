import type { SolveProgress, SolveRequest } from '#planning/solve-request.js';

/** One line about a solve under way: elapsed, best plan so far, gap. */
export function progressText(
  { attempts, progress, startedAt, state }: SolveRequest,
  now: Date,
): string {
  if (state === 'queued')
    return attempts === 0 ? 'waiting for the solver' : 'waiting to be retried';
  const since = startedAt === null ? 0 : now.getTime() - startedAt.getTime();
  const elapsed = `${Math.max(0, Math.floor(since / 1000))} s`;
  if (progress === null) return `${elapsed}, starting`;
  return `${elapsed}, ${progress.message}, ${gapText(progress)}`;
}

const PROMISE = 'commitment:';

/** A promise is counted in sites and years, of which a gap in percent says nothing. */
function gapText({ gap, tier }: SolveProgress): string {
  if (tier?.startsWith(PROMISE)) return `now on the promise ${tier.slice(PROMISE.length)}`;
  const of = tier === null ? '' : ` (${tier})`;
  return gap === null ? `gap not known yet${of}` : `gap ${(gap * 100).toFixed(1)} %${of}`;
}

/** Changes when there is something new to say: taken by a worker, first plan found. */
export function progressStage({ progress, state }: SolveRequest): string {
  const hasPlan = progress !== null && progress.bestObjective !== null;
  return `${state} ${hasPlan ? 'with' : 'without'} plan`;
}
