/**
 * A small vector drawing. Lengths are points (1/72 inch); x runs right and y runs down from the
 * top left corner. Every meaning is carried by hatch, line style or words, so that a reader of a
 * gray copy loses nothing.
 */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
}

export type Shape = Line | Polyline | Polygon | Rect | Label;

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Line {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
  readonly stroke: Stroke;
}

export interface Polyline {
  readonly kind: 'polyline';
  readonly points: readonly Point[];
  readonly stroke: Stroke;
}

/** A closed ring; the last point is not repeated. Left out `stroke`: no outline. */
export interface Polygon {
  readonly kind: 'polygon';
  readonly points: readonly Point[];
  readonly fill: Hatch;
  readonly stroke?: Stroke;
}

/** `x` and `y` are its top left corner. */
export interface Rect {
  readonly kind: 'rect';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly fill: Hatch;
  readonly stroke?: Stroke;
}

/** Words at a point on their baseline. `up` reads from bottom to top. */
export interface Label {
  readonly kind: 'label';
  readonly at: Point;
  readonly text: string;
  readonly size: number;
  readonly weight: 'regular' | 'bold';
  readonly anchor: 'start' | 'middle' | 'end';
  readonly turn: 'level' | 'up';
  /** `paper` clears the ground behind the words, for labels over hatching. */
  readonly ground: 'none' | 'paper';
}

/** Fills that differ without color, ordered from empty to dense where a scale is shown. */
export type Hatch = 'none' | 'light' | 'medium' | 'dark' | 'diagonal' | 'cross' | 'dots';

export type Tone = 'ink' | 'gray' | 'faint' | 'accent';

/** `dash` lists lengths on and off; left out: a solid line. Width in points. */
export interface Stroke {
  readonly tone: Tone;
  readonly width: number;
  readonly dash?: readonly number[];
}
