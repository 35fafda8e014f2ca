import type { Columns } from '../columns.js';
import { roundTicks } from '../ticks.js';
import type { ValueScale } from '../value-axis.js';

export const BAND_FIGURE_HEIGHT = 260;
export const PLOT_TOP = 26;
export const PLOT_BOTTOM = 234;

/** A range with its middle. */
export interface Range {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** A band over the years with a line in its middle. */
export interface Band {
  readonly name: string;
  /** The first of a figure is hatched, the other is drawn by its edges: they stay apart in gray. */
  readonly look: 'hatched' | 'edged';
  readonly ranges: readonly Range[];
}

/** From zero up to the highest range, or to a top that is given. */
export function bandScale(bands: readonly Band[], top?: number): ValueScale {
  const highs = bands.flatMap(({ ranges }) => ranges.map(({ high }) => high));
  const ticks = roundTicks(top ?? Math.max(1, ...highs), 5);
  const perUnit = (PLOT_BOTTOM - PLOT_TOP) / (ticks.at(-1) ?? 1);
  return { ticks, y: (value) => PLOT_BOTTOM - value * perUnit };
}

interface Plane {
  readonly columns: Columns;
  readonly scale: ValueScale;
}

/** A line through one value of every range, from left to right. */
export function linePath(values: readonly number[], { columns, scale }: Plane): string {
  return values
    .map((value, index) => {
      const point = `${columns.middle(index).toFixed(1)} ${scale.y(value).toFixed(1)}`;
      return `${index === 0 ? 'M' : 'L'}${point}`;
    })
    .join('');
}

/** The outline of a band: along its upper edge and back along the lower one. */
export function bandPath(ranges: readonly Range[], { columns, scale }: Plane): string {
  if (ranges.length === 0) return '';
  const point = (value: number, index: number): string =>
    `${columns.middle(index).toFixed(1)} ${scale.y(value).toFixed(1)}`;
  const there = ranges.map(({ high }, index) => point(high, index));
  const back = ranges.map(({ low }, index) => point(low, index)).reverse();
  return `M${[...there, ...back].join('L')}Z`;
}
