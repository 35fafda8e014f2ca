import type { Scale } from './scale.js';
import { axisTicks, linearScale } from './scale.js';
import type { StackedBars } from './bars.js';
import { roughTextWidth } from './text-width.js';
import { knownSum } from './values.js';

/** Where everything of a bar drawing stands, in points. */
export interface BarFrame {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Width of one column, of which the bar takes a part. */
  readonly step: number;
  readonly ticks: readonly number[];
  readonly y: Scale;
}

export const FIGURE_WIDTH = 468;
const USUAL_HEIGHT = 236;
const LABEL_SIZE = 7.5;
const WIDEST_LABELS = 130;

export function barFrame(bars: StackedBars): BarFrame {
  const names = [...bars.series.map((series) => series.label), bars.supplyLabel];
  const labels = Math.max(...names.map((name) => roughTextWidth(name, LABEL_SIZE)));
  const right = FIGURE_WIDTH - Math.min(WIDEST_LABELS, labels) - 22;
  const ticks = axisTicks(greatest(bars), 5);
  const height = bars.height ?? USUAL_HEIGHT;
  const [left, top, bottom] = [34, 30, height - 18];
  return {
    width: FIGURE_WIDTH,
    height,
    left,
    right,
    top,
    bottom,
    step: (right - left) / Math.max(1, bars.columns.length),
    ticks,
    y: linearScale([0, ticks.at(-1) ?? 1], [bottom, top]),
  };
}

/** The values of one column, from the bottom up. */
export function columnValues(bars: StackedBars, column: number) {
  return bars.series.map((series) => series.values[column] ?? null);
}

function greatest(bars: StackedBars): number {
  const totals = bars.columns.map((_, column) => knownSum(columnValues(bars, column)).sum);
  return Math.max(0, ...totals, ...bars.supply.map((value) => value ?? 0));
}
