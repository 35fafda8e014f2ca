import type { Hatch, Label, Line, Point, Polyline, Rect, Stroke } from '../document/drawing.js';

export const THIN: Stroke = { tone: 'ink', width: 0.5 };
export const GRID: Stroke = { tone: 'faint', width: 0.5 };
export const HEAVY: Stroke = { tone: 'ink', width: 1.5 };
export const DASHED: Stroke = { tone: 'ink', width: 0.75, dash: [2.5, 2] };

export function line(from: Point, to: Point, stroke: Stroke): Line {
  return { kind: 'line', from, to, stroke };
}

export function polyline(points: readonly Point[], stroke: Stroke): Polyline {
  return { kind: 'polyline', points, stroke };
}

/** A rectangle given by its corner and size, in points. */
export interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export function rect(area: Area, fill: Hatch, stroke?: Stroke): Rect {
  return { kind: 'rect', ...area, fill, ...(stroke ? { stroke } : {}) };
}

/** Level words in regular weight at the start of their baseline, unless told otherwise. */
export function label(at: Point, text: string, change: Partial<Label> = {}): Label {
  return {
    kind: 'label',
    at,
    text,
    size: 7.5,
    weight: 'regular',
    anchor: 'start',
    turn: 'level',
    ground: 'none',
    ...change,
  };
}
