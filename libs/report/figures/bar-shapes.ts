import type { Shape, Stroke } from '../document/drawing.js';
import { center } from './bar-axes.js';
import type { BarFrame } from './bar-frame.js';
import { columnValues } from './bar-frame.js';
import { label, rect } from './shapes.js';
import type { StackedBars } from './bars.js';
import { knownSum } from './values.js';

const OUTLINE: Stroke = { tone: 'ink', width: 0.4 };
const BAR_SHARE = 0.72;

/** The bars, layer on layer; a question mark stands on a bar of which a part is unknown. */
export function barShapes(bars: StackedBars, frame: BarFrame): readonly Shape[] {
  return bars.columns.flatMap((_, column) => [
    ...layers(bars, frame, column),
    ...unknownMark(bars, frame, column),
  ]);
}

function layers(bars: StackedBars, frame: BarFrame, column: number): readonly Shape[] {
  const width = BAR_SHARE * frame.step;
  const x = center(frame, column) - width / 2;
  let below = 0;
  return columnValues(bars, column).flatMap((value, index): readonly Shape[] => {
    if (value === null || value <= 0) return [];
    const [bottom, top] = [frame.y(below), frame.y(below + value)];
    below += value;
    const hatch = bars.series[index]?.hatch ?? 'none';
    return [rect({ x, y: top, width, height: bottom - top }, hatch, OUTLINE)];
  });
}

function unknownMark(bars: StackedBars, frame: BarFrame, column: number): readonly Shape[] {
  const { sum, complete } = knownSum(columnValues(bars, column));
  if (complete) return [];
  const at = { x: center(frame, column), y: frame.y(sum) - 3 };
  return [label(at, '?', { weight: 'bold', anchor: 'middle' })];
}
