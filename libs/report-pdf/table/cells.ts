import type { Point } from '#report/document/drawing.js';
import type { LayoutContext } from '../blocks/layout-context.js';
import { baseline } from '../blocks/text-pieces.js';
import type { TextLine } from '../text/break-lines.js';
import type { StyledText } from '../text/styled-text.js';
import type { TypeStyle } from '../text/type-styles.js';
import type { GridColumn } from './grid.js';

/** One cell, broken into lines for its column. */
export interface SetCell {
  readonly column: GridColumn;
  readonly lines: readonly TextLine[];
}

/** Breaks the text of a row's cells. */
export function setCells(
  texts: readonly (readonly StyledText[])[],
  grid: readonly GridColumn[],
  context: LayoutContext,
): readonly SetCell[] {
  return grid.map((column, index) => ({
    column,
    lines: context.canvas.lines(texts[index] ?? [], column.width),
  }));
}

/** Lines of the tallest cell, at least one. */
export function lineCount(cells: readonly SetCell[]): number {
  return Math.max(1, ...cells.map((cell) => cell.lines.length));
}

/** The lines from `from` (included) to `to` (excluded) of every cell. */
export function slice(cells: readonly SetCell[], from: number, to: number): readonly SetCell[] {
  return cells.map((cell) => ({ ...cell, lines: cell.lines.slice(from, to) }));
}

/** Draws the lines of one cell, the first with its top at a point of the table's left edge. */
export function drawCell(
  { column, lines }: SetCell,
  at: Point,
  { context, style }: { readonly context: LayoutContext; readonly style: TypeStyle },
): void {
  lines.forEach((line, index) => {
    const x = at.x + column.x + shift(column, line.width);
    const y = at.y + index * style.leading + baseline(style);
    context.canvas.drawLine(line, { x, y });
  });
}

function shift({ align, width }: GridColumn, used: number): number {
  if (align === 'left') return 0;
  return align === 'right' ? width - used : (width - used) / 2;
}
