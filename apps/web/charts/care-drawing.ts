import { wantedHours, type CareRow } from './care-rows.js';
import type { Columns } from './columns.js';
import { roundTicks } from './ticks.js';

export const CARE_HEIGHT = 300;
export const PLOT_TOP = 26;
export const PLOT_BOTTOM = 274;

export interface CareScale {
  readonly ticks: readonly number[];
  /** Height on the page, in pixels from the top, of a number of hours. */
  readonly y: (hours: number) => number;
}

/** What every part of the care figure draws from. */
export interface CareDrawing {
  readonly rows: readonly CareRow[];
  readonly columns: Columns;
  readonly scale: CareScale;
  /** Prefix of the hatches' ids. */
  readonly id: string;
}

/** From zero up to the highest bar or line. */
export function careScale(rows: readonly CareRow[]): CareScale {
  const highest = Math.max(
    1,
    ...rows.map((row) => Math.max(wantedHours(row), row.supplyNow, row.supplyProposed)),
  );
  const ticks = roundTicks(highest, 5);
  const top = ticks.at(-1) ?? 1;
  return { ticks, y: (hours) => PLOT_BOTTOM - ((PLOT_BOTTOM - PLOT_TOP) * hours) / top };
}
