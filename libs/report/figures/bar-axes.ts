import type { Shape } from '../document/drawing.js';
import type { BarFrame } from './bar-frame.js';
import { GRID, label, line, THIN } from './shapes.js';
import type { StackedBars } from './bars.js';
import { roughTextWidth } from './text-width.js';
import { valueText } from './values.js';

const SIZE = 7.5;

/** Grid lines with their values, the unit above them, and the names of the columns. */
export function axisShapes(bars: StackedBars, frame: BarFrame): readonly Shape[] {
  const { left, right, bottom } = frame;
  return [
    label({ x: 0, y: 9 }, bars.unit, { size: SIZE, weight: 'bold' }),
    ...frame.ticks.flatMap((tick): readonly Shape[] => [
      line({ x: left, y: frame.y(tick) }, { x: right, y: frame.y(tick) }, GRID),
      label({ x: left - 5, y: frame.y(tick) + 2.5 }, valueText(tick), {
        size: SIZE,
        anchor: 'end',
      }),
    ]),
    line({ x: left, y: bottom }, { x: right, y: bottom }, THIN),
    ...columnNames(bars.columns, frame),
  ];
}

function columnNames(names: readonly string[], frame: BarFrame): readonly Shape[] {
  const widest = Math.max(0, ...names.map((name) => roughTextWidth(name, SIZE))) + 6;
  const every = Math.max(1, Math.ceil(widest / frame.step));
  return names.flatMap((name, index) =>
    index % every === 0
      ? [
          label({ x: center(frame, index), y: frame.bottom + 11 }, name, {
            size: SIZE,
            anchor: 'middle',
          }),
        ]
      : [],
  );
}

/** Middle of a column. */
export function center(frame: BarFrame, column: number): number {
  return frame.left + (column + 0.5) * frame.step;
}
