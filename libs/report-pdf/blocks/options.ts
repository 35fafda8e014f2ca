import type { Options } from '#report/document/boxes.js';
import type { Point } from '#report/document/drawing.js';
import type { Piece } from '../pieces/piece.js';
import { piece, spaced, together } from '../pieces/piece.js';
import type { LayoutContext } from './layout-context.js';
import { within } from './layout-context.js';
import { optionSections } from './option-sections.js';

const GUTTER = 12;
const PAD_X = 10;
const PAD_Y = 9;

/**
 * Alternatives in boxes of one size, side by side, with facts of the same rank level with each
 * other. Boxes taller than a page go on, frame and all, on the next.
 */
export function optionsPieces({ options }: Options, context: LayoutContext): readonly Piece[] {
  const columnWidth = (context.width - (options.length - 1) * GUTTER) / options.length;
  const inner = within(context, { width: columnWidth - 2 * PAD_X });
  const facts = Math.max(...options.map((option) => option.facts.length));
  const columns = options.map((option) => optionSections(option, facts, inner));
  const sectionCount = Math.max(...columns.map((sections) => sections.length));
  const strips = Array.from({ length: sectionCount }, (_, index) =>
    columns.map((sections) => sections[index] ?? []),
  ).flatMap((section) => sectionStrips(section, context.pageHeight));
  const pad = { height: PAD_Y, parts: columns.map(() => []) };
  const boxed = [pad, ...strips, pad].map((strip, index, all) =>
    boxedPiece(strip, { columnWidth, ends: endsOf(index, all.length) }, context),
  );
  return spaced(together(boxed), 12);
}

/** A strip across all columns: the pieces each column draws in it, one below the other. */
interface Strip {
  readonly height: number;
  readonly parts: readonly (readonly Piece[])[];
}

/** A section as one strip, or line by line where it is taller than a page. */
function sectionStrips(
  section: readonly (readonly Piece[])[],
  pageHeight: number,
): readonly Strip[] {
  const height = Math.max(...section.map(stacked));
  if (height <= pageHeight) return [{ height, parts: section }];
  const lines = Math.max(...section.map((pieces) => pieces.length));
  return Array.from({ length: lines }, (_, line) => {
    const parts = section.map((pieces) => pieces.slice(line, line + 1));
    return { height: Math.max(...parts.map(stacked)), parts };
  });
}

function stacked(pieces: readonly Piece[]): number {
  return pieces.reduce((sum, one) => sum + one.gap + one.height, 0);
}

type Ends = 'top' | 'bottom' | 'inside';

function endsOf(index: number, count: number): Ends {
  if (index === 0) return 'top';
  return index === count - 1 ? 'bottom' : 'inside';
}

interface Boxing {
  readonly columnWidth: number;
  readonly ends: Ends;
}

function boxedPiece({ height, parts }: Strip, boxing: Boxing, context: LayoutContext): Piece {
  return piece(height, (at) =>
    parts.forEach((pieces, column) => {
      const left = at.x + column * (boxing.columnWidth + GUTTER);
      context.tags.artifact('Layout', () =>
        outline({ x: left, y: at.y }, { ...boxing, height }, context),
      );
      drawStack(pieces, { x: left + PAD_X, y: at.y });
    }),
  );
}

function drawStack(pieces: readonly Piece[], at: Point): void {
  let y = at.y;
  for (const one of pieces) {
    one.draw({ x: at.x, y: y + one.gap });
    y += one.gap + one.height;
  }
}

function outline(
  { x, y }: Point,
  { columnWidth, ends, height }: Boxing & { readonly height: number },
  { canvas }: LayoutContext,
): void {
  const right = x + columnWidth;
  const bottom = y + height;
  const rule = { color: 'gray', width: 0.75 } as const;
  canvas.drawRule({ x, y }, { x, y: bottom }, rule);
  canvas.drawRule({ x: right, y }, { x: right, y: bottom }, rule);
  if (ends === 'top') {
    canvas.drawRule({ x, y }, { x: right, y }, { color: 'ink', width: 2 });
  }
  if (ends === 'bottom') canvas.drawRule({ x, y: bottom }, { x: right, y: bottom }, rule);
}
