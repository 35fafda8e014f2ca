import type { Point } from '#report/document/drawing.js';
import type { Row, Table } from '#report/document/table.js';
import type { Piece, Repeated } from '../pieces/piece.js';
import { piece } from '../pieces/piece.js';
import type { Tag } from '../tags/tag-tree.js';
import { styledRuns } from '../text/styled-text.js';
import type { TypeStyle } from '../text/type-styles.js';
import { emboldened } from '../text/type-styles.js';
import type { SetCell } from './cells.js';
import { drawCell, lineCount, setCells, slice } from './cells.js';
import type { TableSetting } from './header-row.js';

export interface RowPlace {
  readonly row: Row;
  readonly body: Tag;
  readonly repeated: Repeated;
  readonly last: 'yes' | 'no';
}

/**
 * One row as one piece, so that it never splits. Only a row taller than a whole page becomes
 * several pieces, cut between lines.
 */
export function rowPieces(place: RowPlace, setting: TableSetting): readonly Piece[] {
  const { context, look, grid, table } = setting;
  const { row, repeated } = place;
  const style = row.emphasis === 'total' ? emboldened(look.cell) : look.cell;
  const texts = row.cells.map((text) => styledRuns(text, style));
  const cells = setCells(texts, grid, context);
  const tags = cellTags(place, setting, table.rowHeaders);
  const room = context.pageHeight - repeated.height - 2 * look.padY;
  const count = lineCount(cells);
  const perPiece = Math.min(count, Math.max(1, Math.floor(room / style.leading)));
  const starts = Array.from({ length: Math.ceil(count / perPiece) }, (_, n) => n * perPiece);
  return starts.map((from) => {
    const part = slice(cells, from, from + perPiece);
    const height = lineCount(part) * style.leading + 2 * look.padY;
    const draw = (at: Point) => drawRow({ cells: part, tags, style, height, place }, at, setting);
    return piece(height, draw, { repeated });
  });
}

function cellTags(
  { row, body }: RowPlace,
  { context }: TableSetting,
  rowHeaders: Table['rowHeaders'],
): readonly Tag[] {
  const tag = context.tags.add(body, 'TR');
  const attributes = { O: 'Table', Scope: 'Row' };
  return row.cells.map((_, index) =>
    index === 0 && rowHeaders === 'first-column'
      ? context.tags.add(tag, 'TH', { attributes })
      : context.tags.add(tag, 'TD'),
  );
}

interface DrawnRow {
  readonly cells: readonly SetCell[];
  readonly tags: readonly Tag[];
  readonly style: TypeStyle;
  readonly height: number;
  readonly place: RowPlace;
}

function drawRow(drawn: DrawnRow, at: Point, setting: TableSetting): void {
  const { context, look } = setting;
  const { cells, tags, style } = drawn;
  context.tags.artifact('Layout', () => rowRules(drawn, at, setting));
  cells.forEach((cell, index) => {
    const tag = tags[index];
    if (!tag || cell.lines.length === 0) return;
    const top = { x: at.x, y: at.y + look.padY };
    context.tags.content(tag, () => drawCell(cell, top, { context, style }));
  });
}

function rowRules({ place, height }: DrawnRow, at: Point, { context }: TableSetting): void {
  const right = at.x + context.width;
  const across = (y: number, color: 'ink' | 'faint', width: number) =>
    context.canvas.drawRule({ x: at.x, y }, { x: right, y }, { color, width });
  if (place.row.emphasis === 'total') across(at.y, 'ink', 0.5);
  if (place.last === 'yes') across(at.y + height, 'ink', 0.75);
  else across(at.y + height, 'faint', 0.5);
}
