import type { Drawing, Label, Point, Rect, Shape, Stroke } from '#report/document/drawing.js';
import type { Canvas } from '../page/canvas.js';
import { COLORS } from '../page/colors.js';
import type { StyledText } from '../text/styled-text.js';
import { TYPE } from '../text/type-styles.js';
import { fillRing, tracePath } from './fill.js';

/** Where a drawing stands on the page and how much it is reduced. */
export interface DrawingPlace {
  readonly at: Point;
  readonly scale: number;
}

/** Draws all shapes in order, later ones on top. */
export function drawDrawing(drawing: Drawing, place: DrawingPlace, canvas: Canvas): void {
  drawing.shapes.forEach((shape) => drawShape(shape, place, canvas));
}

function drawShape(shape: Shape, place: DrawingPlace, canvas: Canvas): void {
  const { pdf } = canvas.file;
  const onPage = (point: Point) => placed(point, place);
  switch (shape.kind) {
    case 'line':
      return strokePath(pdf, [onPage(shape.from), onPage(shape.to)], shape.stroke);
    case 'polyline':
      return strokePath(pdf, shape.points.map(onPage), shape.stroke);
    case 'polygon':
      return drawRing(pdf, shape.points.map(onPage), shape);
    case 'rect':
      return drawRing(pdf, corners(shape).map(onPage), shape);
    case 'label':
      return drawLabel(shape, place, canvas);
  }
}

function placed({ x, y }: Point, { at, scale }: DrawingPlace): Point {
  return { x: at.x + x * scale, y: at.y + y * scale };
}

function corners({ x, y, width, height }: Rect): readonly Point[] {
  const [right, bottom] = [x + width, y + height];
  return [
    { x, y },
    { x: right, y },
    { x: right, y: bottom },
    { x, y: bottom },
  ];
}

function drawRing(
  pdf: PDFKit.PDFDocument,
  ring: readonly Point[],
  { fill, stroke }: Pick<Rect, 'fill'> & { readonly stroke?: Stroke },
): void {
  if (ring.length === 0) return;
  fillRing(pdf, ring, fill);
  if (!stroke) return;
  tracePath(pdf, ring);
  applyStroke(pdf, stroke);
}

function strokePath(pdf: PDFKit.PDFDocument, points: readonly Point[], stroke: Stroke): void {
  if (points.length < 2) return;
  points.forEach(({ x, y }, index) => (index === 0 ? pdf.moveTo(x, y) : pdf.lineTo(x, y)));
  applyStroke(pdf, stroke);
}

function applyStroke(pdf: PDFKit.PDFDocument, { tone, width, dash }: Stroke): void {
  if (dash) pdf.dash([...dash] as unknown as number, {});
  else pdf.undash();
  pdf.lineWidth(width).stroke(COLORS[tone]);
}

function drawLabel(label: Label, place: DrawingPlace, canvas: Canvas): void {
  const size = label.size * place.scale;
  const face = label.weight === 'bold' ? 'bold' : 'regular';
  const style = { ...TYPE.cell, face, size, leading: size * 1.2 } as const;
  const text = canvas.shown({ text: label.text, style });
  const width = canvas.measure(text, style);
  const before = { start: 0, middle: width / 2, end: width }[label.anchor];
  const at = placed(label.at, place);
  const start =
    label.turn === 'level' ? { x: at.x - before, y: at.y } : { x: at.x, y: at.y + before };
  if (label.ground === 'paper') clearGround(start, width, { style, turn: label.turn, canvas });
  canvas.drawText({ text, style }, start, label.turn === 'up' ? { rotation: 90 } : {});
}

interface Ground {
  readonly style: StyledText['style'];
  readonly turn: Label['turn'];
  readonly canvas: Canvas;
}

function clearGround({ x, y }: Point, width: number, { style, turn, canvas }: Ground): void {
  const { size } = style;
  const [up, down, side] = [0.8 * size, 0.28 * size, 0.18 * size];
  const box =
    turn === 'level'
      ? { x: x - side, y: y - up, width: width + 2 * side, height: up + down }
      : { x: x - up, y: y - width - side, width: up + down, height: width + 2 * side };
  canvas.fillBox(box, 'paper');
}
