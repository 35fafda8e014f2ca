import type { Shape } from '../document/drawing.js';
import type { BarFrame } from './bar-frame.js';
import { columnValues } from './bar-frame.js';
import { HEAVY, label, line, rect, THIN } from './shapes.js';
import { spread } from './spread.js';
import type { StackedBars } from './bars.js';
import { roughTextWidth } from './text-width.js';
import type { Value } from './values.js';

const SIZE = 7.5;
const GAP = 11;
const SWATCH = 9;

/** Names beside the last bar, each level with its layer as far as the others leave room. */
export function endLabels(bars: StackedBars, frame: BarFrame): readonly Shape[] {
  const last = bars.columns.length - 1;
  const middles = layerMiddles(columnValues(bars, last)).map(frame.y);
  const supply = frame.y([...bars.supply].reverse().find((value) => value !== null) ?? 0);
  const places = spread([...middles, supply], GAP, [frame.top + 4, frame.bottom - 4]);
  const x = frame.right + 6;
  const room = frame.width - x - SWATCH - 4;
  const words = (text: string, y: number) =>
    label({ x: x + SWATCH + 4, y: y + 2.5 }, fitted(text, room), { size: SIZE });
  return [
    ...bars.series.flatMap(({ label: text, hatch }, index): readonly Shape[] => {
      const y = places[index] ?? 0;
      return [rect({ x, y: y - 3.5, width: SWATCH, height: 7 }, hatch, THIN), words(text, y)];
    }),
    ...supplyLabel({ text: bars.supplyLabel, x, y: places.at(-1) ?? supply }, words),
  ];
}

interface SupplyLabel {
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

function supplyLabel(
  { text, x, y }: SupplyLabel,
  words: (text: string, y: number) => Shape,
): readonly Shape[] {
  return [line({ x, y }, { x: x + SWATCH, y }, HEAVY), words(text, y)];
}

function layerMiddles(values: readonly Value[]): readonly number[] {
  let below = 0;
  return values.map((value) => {
    const middle = below + (value ?? 0) / 2;
    below += value ?? 0;
    return middle;
  });
}

/** A name cut to the room it has; the table below the drawing has it in full. */
export function fitted(text: string, room: number): string {
  if (roughTextWidth(text, SIZE) <= room) return text;
  const kept = Math.max(1, Math.floor(room / roughTextWidth('x', SIZE)) - 1);
  return `${[...text].slice(0, kept).join('').trimEnd()}…`;
}
