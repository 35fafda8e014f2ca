import type { Hatch } from '../document/drawing.js';
import type { Value } from './values.js';

/** One layer of the bars, from the bottom up. As many values as there are columns. */
export interface Series {
  readonly label: string;
  readonly hatch: Hatch;
  readonly values: readonly Value[];
}

/** What stacked bars against a stepped line show. */
export interface StackedBars {
  /** Names of the columns, such as years or months. */
  readonly columns: readonly string[];
  readonly series: readonly Series[];
  /** The stepped line: one value per column. */
  readonly supply: readonly Value[];
  readonly supplyLabel: string;
  /** Unit of all values, printed above the axis. */
  readonly unit: string;
  /** Of the drawing, in points. Left out: 236. */
  readonly height?: number;
}
