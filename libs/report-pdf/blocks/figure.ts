import type { Point } from '#report/document/drawing.js';
import type { Figure } from '#report/document/figure.js';
import { drawDrawing } from '../drawing/draw-drawing.js';
import type { Piece } from '../pieces/piece.js';
import { piece, spaced } from '../pieces/piece.js';
import type { Tag } from '../tags/tag-tree.js';
import { setAttributes } from '../tags/tag-tree.js';
import { TYPE } from '../text/type-styles.js';
import type { LayoutContext } from './layout-context.js';
import { within } from './layout-context.js';
import { tablePieces } from './table.js';
import { textPieces } from './text-pieces.js';

// The rest of a page is left for the title above the drawing.
const TALLEST = 0.85;

/**
 * Title, drawing and data table. The title stands beside the Figure element and not inside it,
 * because a reader that speaks the alternate text skips what is inside.
 */
export function figurePieces(figure: Figure, context: LayoutContext): readonly Piece[] {
  const parent = context.tags.add(context.parent, 'Div');
  const inner = within(context, { parent });
  const caption = context.tags.add(parent, 'Caption');
  const runs = [{ text: figure.title, style: TYPE.caption }];
  const title = textPieces(inner, { tag: caption, runs, style: TYPE.caption });
  const tag = context.tags.add(parent, 'Figure', { alt: figure.alt });
  const pieces = [
    ...title.map((line): Piece => ({ ...line, keep: 'next' })),
    drawingPiece(figure, tag, context),
    ...tablePieces(figure.table, inner),
  ];
  return spaced(pieces, 16);
}

function drawingPiece(figure: Figure, tag: Tag, context: LayoutContext): Piece {
  const { drawing } = figure;
  const { pageHeight, width } = context;
  const scale = Math.min(1, width / drawing.width, (TALLEST * pageHeight) / drawing.height);
  const size = { width: drawing.width * scale, height: drawing.height * scale };
  const draw = (at: Point) => {
    setAttributes(tag, boxAttributes(at, size, context));
    context.tags.content(tag, () => drawDrawing(drawing, { at, scale }, context.canvas));
  };
  return piece(size.height, draw, { gap: 4 });
}

interface Size {
  readonly width: number;
  readonly height: number;
}

/** The figure's box in PDF coordinates, which run up from the bottom of the page. */
function boxAttributes({ x, y }: Point, size: Size, { canvas }: LayoutContext) {
  const pageHeight = canvas.file.pdf.page.height;
  const box = [x, pageHeight - y - size.height, x + size.width, pageHeight - y];
  return { O: 'Layout', Placement: 'Block', BBox: box };
}
