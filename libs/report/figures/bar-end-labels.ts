import type { Shape } from '../document/drawing.js';
import type { BarFrame } from './bar-frame.js';
import { columnValues } from './bar-frame.js';
import type { StackedBars } from './bars.js';
import { HEAVY, label, line, rect, THIN } from './shapes.js';
import { spread } from './spread.js';
import type { Value } from './values.js';
import { wrapLabel } from './wrap-label.js';

const SIZE = 7.5;
const LINE = 9;
const SWATCH = 9;
const HAIR = 1e-6;

/** Names beside the last bar, each level with its layer as far as the others leave room. */
export function endLabels(bars: StackedBars, frame: BarFrame): readonly Shape[] {
  const x = frame.right + 6;
  const room = frame.width - x - SWATCH - 4;
  const names = [...bars.series.map((series) => series.label), bars.supplyLabel];
  const wrapped = names.map((name) => wrapLabel(name, SIZE, room));
  const gap = Math.max(...wrapped.map((lines) => lines.length)) * LINE + 2;
  const places = spread(wishes(bars, frame), gap, [frame.top + 4, frame.bottom - gap / 2]);
  return wrapped.flatMap((lines, index) => {
    const y = places[index] ?? 0;
    return [swatch(bars, index, { x, y }), ...words(lines, x + SWATCH + 4, y)];
  });
}

/**
 * Heights of the layers' middles and of the supply line at the last column. Layers of no height
 * are set a hair apart, so that their names keep the order of the layers.
 */
function wishes(bars: StackedBars, frame: BarFrame): readonly number[] {
  const middles = layerMiddles(columnValues(bars, bars.columns.length - 1));
  const supply = bars.supply.findLast((value) => value !== null) ?? 0;
  return [...middles, supply].map((value, rank) => frame.y(value) - rank * HAIR);
}

function swatch(bars: StackedBars, index: number, at: { x: number; y: number }): Shape {
  const series = bars.series[index];
  if (!series) return line(at, { x: at.x + SWATCH, y: at.y }, HEAVY);
  return rect({ x: at.x, y: at.y - 3.5, width: SWATCH, height: 7 }, series.hatch, THIN);
}

function words(lines: readonly string[], x: number, y: number): readonly Shape[] {
  return lines.map((text, row) => label({ x, y: y + 2.5 + row * LINE }, text, { size: SIZE }));
}

function layerMiddles(values: readonly Value[]): readonly number[] {
  let below = 0;
  return values.map((value) => {
    const middle = below + (value ?? 0) / 2;
    below += value ?? 0;
    return middle;
  });
}
