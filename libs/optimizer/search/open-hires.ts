import type { SearchState } from './state.js';

/** Positions of one type that start in a year (index); `count` is above 0. */
export interface OpenHire {
  readonly position: number;
  readonly startYear: number;
  readonly count: number;
}

/** Every hire that is not frozen, by position and then by year. */
export function openHires({ hires, tables }: SearchState): OpenHire[] {
  return hires.flatMap((byYear, position) =>
    Array.from(byYear, (count, startYear) => ({ position, startYear, count })).filter(
      ({ startYear, count }) => count > 0 && startYear >= tables.firstOpenYear,
    ),
  );
}
