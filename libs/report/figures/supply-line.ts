import type { Point, Shape } from '../document/drawing.js';
import { center } from './bar-axes.js';
import type { BarFrame } from './bar-frame.js';
import { columnValues } from './bar-frame.js';
import { DASHED, HEAVY, label, line, polyline } from './shapes.js';
import type { StackedBars } from './bars.js';
import { roughTextWidth } from './text-width.js';
import { knownSum } from './values.js';

/** The stepped line of supply, broken where it is unknown, and the first column above it. */
export function supplyShapes(bars: StackedBars, frame: BarFrame): readonly Shape[] {
  return [
    ...steps(bars, frame).map((points) => polyline(points, HEAVY)),
    ...firstShortMark(bars, frame),
  ];
}

/** The first column whose known load is above a known supply, or `undefined`. */
export function firstShort(bars: StackedBars): number | undefined {
  const index = bars.columns.findIndex((_, column) => {
    const supply = bars.supply[column] ?? null;
    return supply !== null && knownSum(columnValues(bars, column)).sum > supply;
  });
  return index === -1 ? undefined : index;
}

function steps(bars: StackedBars, frame: BarFrame): readonly (readonly Point[])[] {
  const lines: Point[][] = [];
  let open: Point[] | undefined;
  bars.columns.forEach((_, column) => {
    const value = bars.supply[column] ?? null;
    if (value === null) {
      open = undefined;
      return;
    }
    if (!open) lines.push((open = []));
    const x = frame.left + column * frame.step;
    open.push({ x, y: frame.y(value) }, { x: x + frame.step, y: frame.y(value) });
  });
  return lines;
}

function firstShortMark(bars: StackedBars, frame: BarFrame): readonly Shape[] {
  const column = firstShort(bars);
  if (column === undefined) return [];
  const x = center(frame, column);
  const text = `First above supply: ${bars.columns[column] ?? ''}`;
  const fits = x + roughTextWidth(text, 8, 'bold') < frame.width;
  const barTop = frame.y(knownSum(columnValues(bars, column)).sum);
  return [
    line({ x, y: 22 }, { x, y: barTop - 2 }, DASHED),
    label({ x: fits ? x - 2 : x + 2, y: 19 }, text, {
      size: 8,
      weight: 'bold',
      anchor: fits ? 'start' : 'end',
    }),
  ];
}
