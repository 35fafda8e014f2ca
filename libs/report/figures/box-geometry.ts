import type { Point } from '../document/drawing.js';
import type { Area } from './shapes.js';

export interface Segment {
  readonly from: Point;
  readonly to: Point;
}

export function middle({ x, y, width, height }: Area): Point {
  return { x: x + width / 2, y: y + height / 2 };
}

/** Whether boxes share ground; boxes that only touch do not. */
export function overlap(a: Area, b: Area): boolean {
  const across = a.x < b.x + b.width && b.x < a.x + a.width;
  return across && a.y < b.y + b.height && b.y < a.y + a.height;
}

/** Whether the first box lies within the second. */
export function within(box: Area, bounds: Area): boolean {
  return (
    box.x >= bounds.x &&
    box.y >= bounds.y &&
    box.x + box.width <= bounds.x + bounds.width &&
    box.y + box.height <= bounds.y + bounds.height
  );
}

/** The box with a margin on all sides. */
export function grown({ x, y, width, height }: Area, by: number): Area {
  return { x: x - by, y: y - by, width: width + 2 * by, height: height + 2 * by };
}

/** The point of a box that is nearest to a point. */
export function nearest({ x, y, width, height }: Area, to: Point): Point {
  return {
    x: Math.min(Math.max(to.x, x), x + width),
    y: Math.min(Math.max(to.y, y), y + height),
  };
}

/** Whether any part of a segment lies in a box (the box clips it, Liang and Barsky 1984). */
export function crosses({ from, to }: Segment, box: Area): boolean {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const sides = [
    [-dx, from.x - box.x],
    [dx, box.x + box.width - from.x],
    [-dy, from.y - box.y],
    [dy, box.y + box.height - from.y],
  ] as const;
  let [enters, leaves] = [0, 1];
  for (const [step, room] of sides) {
    if (step === 0 && room < 0) return false;
    if (step < 0) enters = Math.max(enters, room / step);
    if (step > 0) leaves = Math.min(leaves, room / step);
  }
  return enters < leaves;
}

/** Whether a point lies in a ring whose last point is not repeated (even-odd rule). */
export function inRing({ x, y }: Point, ring: readonly Point[]): boolean {
  return ring.reduce((inside, a, index) => {
    const b = ring[(index + 1) % ring.length] ?? a;
    const between = a.y > y !== b.y > y;
    return between && x < a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y) ? !inside : inside;
  }, false);
}
