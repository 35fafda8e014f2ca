import type { Drawing, Point, Shape } from '../document/drawing.js';
import type { Figure } from '../document/figure.js';
import type { Table } from '../document/table.js';

/** Room between two drawings, in points. */
const GAP = 14;

/** What two figures share once they are one. */
export interface StackParts {
  readonly title: string;
  readonly table: Table;
  /** Most height on the page, in points; a taller drawing is shrunk to it. */
  readonly mostHeight: number;
}

/** Two figures of the same years as one: one drawing above the other, with one table for both. */
export function stackFigures(
  above: Figure,
  below: Figure,
  { title, table, mostHeight }: StackParts,
): Figure {
  const down = above.drawing.height + GAP;
  const height = down + below.drawing.height;
  const width = Math.max(above.drawing.width, below.drawing.width);
  return {
    kind: 'figure',
    title,
    alt: `${above.alt} Below it: ${below.alt}`,
    drawing: {
      // A page fits a drawing to its width, so a wider one is drawn smaller.
      width: width * Math.max(1, height / mostHeight),
      height,
      shapes: [...above.drawing.shapes, ...below.drawing.shapes.map((shape) => moved(shape, down))],
    } satisfies Drawing,
    table,
  };
}

function moved(shape: Shape, down: number): Shape {
  const point = ({ x, y }: Point): Point => ({ x, y: y + down });
  switch (shape.kind) {
    case 'line':
      return { ...shape, from: point(shape.from), to: point(shape.to) };
    case 'polyline':
    case 'polygon':
      return { ...shape, points: shape.points.map(point) };
    case 'rect':
      return { ...shape, y: shape.y + down };
    case 'label':
      return { ...shape, at: point(shape.at) };
  }
}
