import type { Shape } from '../document/drawing.js';
import type { Figure } from '../document/figure.js';
import { numberColumn, row, table, textColumn } from '../document/table.js';
import { axisTicks, linearScale } from './scale.js';
import { GRID, HEAVY, label, line, rect, THIN } from './shapes.js';

const WIDTH = 468;
const HEIGHT = 58;
const LEFT = 24;
const RIGHT = WIDTH - 24;
const BAR = { top: 18, height: 12 };
const AXIS = 40;

/** A likely cost with its range, in whole dollars of one year. */
export interface CostRange {
  readonly title: string;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  /** The year whose dollars they are. */
  readonly dollarsOf: string;
  /** Tells dollars as far as they can be trusted. */
  readonly words: (dollars: number) => string;
  /** Below the table: what class the estimate is of. */
  readonly note: string;
}

/** The range of an estimate as one bar with its likely value marked, and its data table. */
export function costBandFigure(range: CostRange): Figure {
  const { title, low, likely, high, dollarsOf, words, note } = range;
  return {
    kind: 'figure',
    title,
    alt: `A bar from ${words(low)} to ${words(high)} with a mark at the likely ${words(likely)}, in ${dollarsOf} dollars.`,
    drawing: { width: WIDTH, height: HEIGHT, shapes: shapesOf(range) },
    table: table({
      caption: `${title}: values`,
      density: 'compact',
      rowHeaders: 'none',
      columns: [
        textColumn('Dollars of', 1),
        numberColumn('Low'),
        numberColumn('Likely'),
        numberColumn('High'),
      ],
      rows: [row(dollarsOf, words(low), words(likely), words(high))],
      note,
    }),
  };
}

function shapesOf({ low, likely, high, words }: CostRange): readonly Shape[] {
  const ticks = axisTicks(high, 5);
  const x = linearScale([0, ticks.at(-1) ?? 1], [LEFT, RIGHT]);
  const { top, height } = BAR;
  const above = (value: number, anchor: 'start' | 'middle' | 'end', weight: 'regular' | 'bold') =>
    label({ x: x(value), y: top - 5 }, words(value), { anchor, weight });
  return [
    ...ticks.flatMap((tick): readonly Shape[] => [
      line({ x: x(tick), y: AXIS - 4 }, { x: x(tick), y: AXIS }, GRID),
      label({ x: x(tick), y: AXIS + 10 }, words(tick), { anchor: 'middle' }),
    ]),
    line({ x: LEFT, y: AXIS }, { x: RIGHT, y: AXIS }, THIN),
    rect({ x: x(low), y: top, width: x(likely) - x(low), height }, 'light', THIN),
    rect({ x: x(likely), y: top, width: x(high) - x(likely), height }, 'diagonal', THIN),
    line({ x: x(likely), y: top - 3 }, { x: x(likely), y: top + height + 3 }, HEAVY),
    above(low, 'end', 'regular'),
    above(likely, 'middle', 'bold'),
    above(high, 'start', 'regular'),
  ];
}
