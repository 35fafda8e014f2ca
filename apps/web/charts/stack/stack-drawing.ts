import type { Columns } from '../columns.js';
import { roundTicks } from '../ticks.js';
import type { ValueScale } from '../value-axis.js';

export const STACK_HEIGHT = 300;
export const PLOT_TOP = 26;
export const PLOT_BOTTOM = 274;

/** One bar, by the label that names it in the table, and the year under it. */
export interface StackRow {
  readonly label: string;
  readonly year: string;
  /** Left out: within the plan. */
  readonly afterHorizon?: boolean;
}

/** One part of the bars. */
export interface Layer<Row> {
  readonly name: string;
  readonly className: string;
  /** Left out: the fill is that of the class. */
  readonly hatch?: 'sparse' | 'dense' | 'dots';
  readonly of: (row: Row) => number;
}

/** Steps from bar to bar. */
export interface Line<Row> {
  readonly name: string;
  readonly className: 'step-line' | 'step-dashed';
  readonly of: (row: Row) => number;
}

/** A small triangle over the bars for which something holds. */
export interface Mark<Row> {
  readonly name: string;
  readonly isAt: (row: Row) => boolean;
}

/** What a stacked figure shows of its rows; its key and its drawing are made of it. */
export interface StackSpec<Row extends StackRow> {
  /** From the bottom up. */
  readonly layers: readonly Layer<Row>[];
  /** Hangs below the axis: what comes from outside. */
  readonly below?: Layer<Row>;
  /** The first is drawn on top. */
  readonly lines: readonly Line<Row>[];
  readonly mark?: Mark<Row>;
}

/** What every part of a stacked figure draws from. */
export interface StackDrawing<Row extends StackRow> {
  readonly spec: StackSpec<Row>;
  readonly rows: readonly Row[];
  readonly columns: Columns;
  readonly scale: ValueScale;
  /** Prefix of the hatches' ids. */
  readonly id: string;
}

/** Height of a whole bar. */
export function stackTotal<Row extends StackRow>({ layers }: StackSpec<Row>, row: Row): number {
  return layers.reduce((sum, layer) => sum + layer.of(row), 0);
}

/** From the lowest hanging bar, or zero, up to the highest bar or line. */
export function stackScale<Row extends StackRow>(
  spec: StackSpec<Row>,
  rows: readonly Row[],
): ValueScale {
  const highest = Math.max(
    1,
    ...rows.flatMap((row) => [stackTotal(spec, row), ...spec.lines.map((line) => line.of(row))]),
  );
  const deepest = Math.max(0, ...rows.map((row) => spec.below?.of(row) ?? 0));
  const step = roundTicks(Math.max(highest, deepest), 5)[1] ?? 1;
  const [over, under] = [Math.ceil(highest / step), Math.ceil(deepest / step)];
  const perUnit = (PLOT_BOTTOM - PLOT_TOP) / ((over + under) * step);
  const zero = PLOT_TOP + over * step * perUnit;
  const ticks = Array.from({ length: over + under + 1 }, (_, index) => (index - under) * step);
  return { ticks, y: (value) => zero - value * perUnit };
}
