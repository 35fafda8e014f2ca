import { applyHire, type SearchState } from './state.js';

/** Takes off every hire that is not frozen, so that only those that are needed are made again. */
export function clearHires(state: SearchState): void {
  state.hires.forEach((byYear, position) => {
    byYear.forEach((count, startYear) => {
      if (count > 0 && startYear >= state.tables.firstOpenYear)
        applyHire(state, { position, startYear, count: -count });
    });
  });
}
