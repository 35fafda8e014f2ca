import type { SolveSurroundings } from './settings.js';

/** Surroundings that nobody stops a solve from and that are told nothing. */
export function quietSurroundings(elapsed: () => number): SolveSurroundings {
  return {
    elapsed,
    shouldStop: () => false,
    onProgress: () => undefined,
    onNoPlan: () => undefined,
    onPlan: () => undefined,
  };
}
