import type { Point, Shape } from '../document/drawing.js';
import type { Area } from './shapes.js';
import { label, line, THIN } from './shapes.js';
import { roughTextWidth } from './text-width.js';

export interface LabelWish {
  readonly text: string;
  /** The box around what it names. */
  readonly around: Area;
  /** `open`: wide ground on which other labels may stand. */
  readonly ground: 'covered' | 'open';
}

const SIZE = 7.5;

/**
 * Places labels one after the other: inside what they name where they fit, else on the nearest
 * spot that covers nothing drawn, else on the nearest that covers no other label. A moved label
 * gets a leader line. If no spot inside the bounds is free the label is named in `omitted`.
 */
export function placeLabels(
  wishes: readonly LabelWish[],
  bounds: Area,
): { readonly shapes: readonly Shape[]; readonly omitted: readonly string[] } {
  const drawn = wishes.filter(({ ground }) => ground === 'covered').map(({ around }) => around);
  const taken: Area[] = [];
  const shapes: Shape[] = [];
  const omitted: string[] = [];
  for (const wish of wishes) {
    const spot = spotFor(wish, { drawn, taken, bounds });
    if (spot) {
      taken.push(boxOf(wish.text, spot));
      shapes.push(...labelShapes(wish, spot));
    } else {
      omitted.push(wish.text);
    }
  }
  return { shapes, omitted };
}

interface Ground {
  readonly drawn: readonly Area[];
  readonly taken: readonly Area[];
  readonly bounds: Area;
}

function spotFor({ text, around }: LabelWish, { drawn, taken, bounds }: Ground): Point | undefined {
  const center = middle(around);
  const inside = boxOf(text, center);
  const fits = inside.width <= around.width && inside.height <= around.height;
  if (fits && free(inside, taken, bounds)) return center;
  const spots = spotsAround(around);
  return (
    spots.find((at) => free(boxOf(text, at), [...taken, ...drawn], bounds)) ??
    spots.find((at) => free(boxOf(text, at), taken, bounds))
  );
}

function labelShapes({ text, around }: LabelWish, spot: Point): readonly Shape[] {
  const center = middle(around);
  const moved = spot.x !== center.x || spot.y !== center.y;
  const base = { x: spot.x, y: spot.y + 2.6 };
  const look = { size: SIZE, weight: 'bold', anchor: 'middle', ground: 'paper' } as const;
  return [...(moved ? [line(center, spot, THIN)] : []), label(base, text, look)];
}

function middle({ x, y, width, height }: Area): Point {
  return { x: x + width / 2, y: y + height / 2 };
}

/** Rings of eight spots at growing distance from the edge of a box. */
function spotsAround(around: Area): readonly Point[] {
  const { x, y } = middle(around);
  return [8, 14, 22, 32, 44, 58, 74, 92].flatMap((distance) =>
    Array.from({ length: 8 }, (_, turn) => {
      const angle = (turn * Math.PI) / 4 - Math.PI / 2;
      return {
        x: x + (around.width / 2 + 1.8 * distance) * Math.cos(angle),
        y: y + (around.height / 2 + distance) * Math.sin(angle),
      };
    }),
  );
}

function boxOf(text: string, { x, y }: Point): Area {
  const width = roughTextWidth(text, SIZE, 'bold') + 3;
  return { x: x - width / 2, y: y - 5, width, height: 10 };
}

function free(box: Area, taken: readonly Area[], bounds: Area): boolean {
  const inside =
    box.x >= bounds.x &&
    box.y >= bounds.y &&
    box.x + box.width <= bounds.x + bounds.width &&
    box.y + box.height <= bounds.y + bounds.height;
  return inside && !taken.some((other) => overlap(box, other));
}

function overlap(a: Area, b: Area): boolean {
  const across = a.x < b.x + b.width && b.x < a.x + a.width;
  return across && a.y < b.y + b.height && b.y < a.y + a.height;
}
