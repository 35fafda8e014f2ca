import type { SearchState } from './state.js';

/** Positions of one type that start in a year (index); `count` is above 0. */
export interface OpenHire {
  readonly position: number;
  readonly startYear: number;
  readonly count: number;
}

/** Every hire that is not frozen, by position and then by year. */
export function openHires({ hires, tables }: SearchState): OpenHire[] {
  const open: OpenHire[] = [];
  hires.forEach((byYear, position) => {
    for (let startYear = tables.firstOpenYear; startYear < byYear.length; startYear++) {
      const count = byYear[startYear] ?? 0;
      if (count > 0) open.push({ position, startYear, count });
    }
  });
  return open;
}
