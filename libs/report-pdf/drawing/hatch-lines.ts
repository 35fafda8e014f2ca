import type { Box } from '../page/canvas.js';
import type { Point } from '#report/document/drawing.js';

/** A straight segment. */
export type Segment = readonly [Point, Point];

/**
 * Parallel lines at 45 degrees that cover a box, `spacing` points apart along x. Their phase is
 * that of the page, so that neighboring areas with one hatch look like one area.
 * `rising`: from bottom left to top right.
 */
export function hatchLines(
  box: Box,
  spacing: number,
  slope: 'rising' | 'falling',
): readonly Segment[] {
  const { x, y, width, height } = box;
  const lean = slope === 'rising' ? 1 : -1;
  const bottom = y + height;
  // A rising line through (x, bottom) has x + y constant, a falling one x - y.
  const key = (px: number, py: number) => px + lean * py;
  const keys = [key(x, y), key(x + width, y), key(x, bottom), key(x + width, bottom)];
  const first = Math.ceil(Math.min(...keys) / spacing);
  const last = Math.floor(Math.max(...keys) / spacing);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index): Segment => {
    const constant = (first + index) * spacing;
    return [
      { x: constant - lean * y, y },
      { x: constant - lean * bottom, y: bottom },
    ];
  });
}

/** Centers of dots on a square grid that cover a box, in the phase of the page. */
export function hatchDots(box: Box, spacing: number): readonly Point[] {
  const columns = steps(box.x, box.x + box.width, spacing);
  return steps(box.y, box.y + box.height, spacing).flatMap((y) => columns.map((x) => ({ x, y })));
}

function steps(from: number, to: number, spacing: number): readonly number[] {
  const first = Math.ceil(from / spacing);
  const count = Math.max(0, Math.floor(to / spacing) - first + 1);
  return Array.from({ length: count }, (_, index) => (first + index) * spacing);
}
