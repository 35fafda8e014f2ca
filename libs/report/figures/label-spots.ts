import type { Point } from '../document/drawing.js';
import { inRing, middle, nearest, type Segment } from './box-geometry.js';
import type { Area } from './shapes.js';
import { roughTextWidth } from './text-width.js';

export interface LabelWish {
  readonly text: string;
  /** What it names. The last point of the ring is not repeated. */
  readonly ring: readonly Point[];
  /** The box around it. */
  readonly around: Area;
  /** `open`: wide ground on which other labels may stand. */
  readonly ground: 'covered' | 'open';
}

/** A place for a label; those of less cost are better. */
export interface Spot {
  readonly box: Area;
  /** From what it names, where it stands apart from it. */
  readonly leader?: Segment;
  readonly cost: number;
}

export const LABEL_SIZE = 7.5;
const HEIGHT = 10;
const GAP = 1.5;
const DIRECTIONS = 16;
const DISTANCES = [6, 12, 20, 30, 42, 56, 72, 92];
/** Positions tried across wide ground, each way. */
const GRID = 9;

/** Costs, in points of distance that each is worth. */
const COST = { corner: 2, outside: 6, leader: 10 };

/** All places for a label, the best first: within what it names, at its edge, or apart with a leader. */
export function spotsFor(wish: LabelWish): readonly Spot[] {
  const size = boxSize(wish);
  const near = wish.ground === 'open' ? groundSpots(wish, size) : siteSpots(wish, size);
  return [...near, ...leaderSpots(wish, size)].sort((a, b) => a.cost - b.cost);
}

export function weightOf({ ground }: LabelWish): 'bold' | 'regular' {
  return ground === 'covered' ? 'bold' : 'regular';
}

type Size = Pick<Area, 'width' | 'height'>;

function boxSize(wish: LabelWish): Size {
  return { width: roughTextWidth(wish.text, LABEL_SIZE, weightOf(wish)) + 3, height: HEIGHT };
}

function boxAt({ x, y }: Point, { width, height }: Size): Area {
  return { x: x - width / 2, y: y - height / 2, width, height };
}

function siteSpots({ around }: LabelWish, size: Size): Spot[] {
  const center = middle(around);
  const [dx, dy] = [(around.width + size.width) / 2 + GAP, (around.height + size.height) / 2 + GAP];
  const shift = Math.abs(size.width - around.width) / 2;
  const fits = size.width <= around.width && size.height <= around.height;
  const beside: readonly (readonly [x: number, y: number, cost: number])[] = [
    [0, -dy, 1],
    [0, dy, 1.2],
    [dx, 0, 1.4],
    [-dx, 0, 1.6],
    ...[-shift, shift].flatMap((x) => [
      [x, -dy, COST.corner] as const,
      [x, dy, COST.corner + 0.2] as const,
    ]),
  ];
  return [
    ...(fits ? [{ box: boxAt(center, size), cost: 0 }] : []),
    ...beside.map(([x, y, cost]) => ({
      box: boxAt({ x: center.x + x, y: center.y + y }, size),
      cost,
    })),
  ];
}

/** Places on wide ground, the upper middle first, and just above or below it. */
function groundSpots({ around, ring }: LabelWish, size: Size): Spot[] {
  const top = { x: middle(around).x, y: around.y };
  const steps = Array.from({ length: GRID }, (_, n) => (n + 0.5) / GRID);
  const inside = steps.flatMap((right) =>
    steps.map((down): Spot => {
      const at = { x: around.x + right * around.width, y: around.y + down * around.height };
      return { box: boxAt(at, size), cost: 0.05 * Math.hypot(at.x - top.x, at.y - top.y) };
    }),
  );
  const below = around.y + around.height + size.height / 2 + GAP;
  const above = around.y - size.height / 2 - GAP;
  return [
    ...inside.filter(({ box }) => corners(box).every((corner) => inRing(corner, ring))),
    { box: boxAt({ x: top.x, y: above }, size), cost: COST.outside },
    { box: boxAt({ x: top.x, y: below }, size), cost: COST.outside + 1 },
  ];
}

function corners({ x, y, width, height }: Area): Point[] {
  return [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
}

function leaderSpots({ around }: LabelWish, size: Size): Spot[] {
  const center = middle(around);
  return DISTANCES.flatMap((distance) =>
    Array.from({ length: DIRECTIONS }, (_, turn): Spot => {
      const angle = (turn * 2 * Math.PI) / DIRECTIONS - Math.PI / 2;
      const box = boxAt(
        {
          x: center.x + ((around.width + size.width) / 2 + distance) * Math.cos(angle),
          y: center.y + ((around.height + size.height) / 2 + distance) * Math.sin(angle),
        },
        size,
      );
      return { box, leader: leaderFrom(around, box), cost: COST.leader + distance };
    }),
  );
}

/** From a little within what is named, whose ring may not fill its box, to the edge of the label. */
function leaderFrom(around: Area, box: Area): Segment {
  const center = middle(around);
  const edge = nearest(around, middle(box));
  const from = { x: edge.x + (center.x - edge.x) / 3, y: edge.y + (center.y - edge.y) / 3 };
  return { from, to: nearest(box, from) };
}
