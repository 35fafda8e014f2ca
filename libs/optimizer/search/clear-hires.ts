import { openHires } from './open-hires.js';
import { applyHire, type SearchState } from './state.js';

/** Takes off every hire that is not frozen, so that only those that are needed are made again. */
export function clearHires(state: SearchState): void {
  for (const hire of openHires(state)) applyHire(state, { ...hire, count: -hire.count });
}
