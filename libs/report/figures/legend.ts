import type { Hatch, Shape, Stroke } from '../document/drawing.js';
import { label, rect, THIN } from './shapes.js';
import { roughTextWidth } from './text-width.js';

export interface LegendEntry {
  readonly text: string;
  readonly fill: Hatch;
  /** Left out: a thin solid outline. */
  readonly stroke?: Stroke;
}

export interface Legend {
  readonly shapes: readonly Shape[];
  readonly height: number;
}

const SIZE = 7.5;
const ROW = 12;
const SWATCH = { width: 12, height: 8 };

/** Swatches with their words, in rows no wider than `width`, from (0, `top`) down. */
export function legend(entries: readonly LegendEntry[], width: number, top: number): Legend {
  let x = 0;
  let row = 0;
  const shapes = entries.flatMap((entry): readonly Shape[] => {
    const needed = SWATCH.width + 4 + roughTextWidth(entry.text, SIZE) + 12;
    if (x > 0 && x + needed > width) {
      x = 0;
      row += 1;
    }
    const y = top + row * ROW;
    const left = x;
    x += needed;
    return [
      rect({ x: left, y, ...SWATCH }, entry.fill, entry.stroke ?? THIN),
      label({ x: left + SWATCH.width + 4, y: y + 6.75 }, entry.text, { size: SIZE }),
    ];
  });
  return { shapes, height: entries.length === 0 ? 0 : (row + 1) * ROW };
}
