import type { Table } from '#report/document/table.js';
import type { Piece } from '../pieces/piece.js';
import { spaced, together } from '../pieces/piece.js';
import { rowPieces } from '../table/body-row.js';
import { tableGrid } from '../table/grid.js';
import type { TableSetting } from '../table/header-row.js';
import { headerRow } from '../table/header-row.js';
import { tableLook } from '../table/table-look.js';
import { styledRuns } from '../text/styled-text.js';
import { TYPE } from '../text/type-styles.js';
import type { LayoutContext } from './layout-context.js';
import { textPieces } from './text-pieces.js';

const GAP = 14;
// A table that takes up to this part of a page is not broken.
const KEPT_WHOLE = 0.4;

/** A table with its caption above and its note below. */
export function tablePieces(table: Table, context: LayoutContext): readonly Piece[] {
  const tag = context.tags.add(context.parent, 'Table');
  const look = tableLook(table.density);
  const setting = { table, look, tag, context, grid: tableGrid(table, look, context) };
  const caption = captionPieces(setting);
  const { first, repeated } = headerRow(setting);
  const body = context.tags.add(tag, 'TBody');
  const rows = table.rows.flatMap((row, index) => {
    const last = index === table.rows.length - 1 ? 'yes' : 'no';
    return rowPieces({ row, body, repeated, last }, setting);
  });
  const pieces = [...caption, first, ...paired(rows), ...notePieces(table, context)];
  return spaced(whole(pieces, context), GAP);
}

function captionPieces({ context, table, tag }: TableSetting): readonly Piece[] {
  const caption = context.tags.add(tag, 'Caption');
  const runs = [{ text: table.caption, style: TYPE.caption }];
  const lines = textPieces(context, { tag: caption, runs, style: TYPE.caption });
  return lines.map((line) => ({ ...line, keep: 'next' }));
}

/** No single row stays alone below a header or above the end. */
function paired(rows: readonly Piece[]): readonly Piece[] {
  const kept = new Set([0, rows.length - 2]);
  return rows.map((row, index) =>
    kept.has(index) && index < rows.length - 1 ? { ...row, keep: 'next' } : row,
  );
}

function notePieces(table: Table, context: LayoutContext): readonly Piece[] {
  if (table.note === undefined) return [];
  const tag = context.tags.add(context.parent, 'P');
  const runs = styledRuns(table.note, TYPE.small);
  return spaced(textPieces(context, { tag, runs, style: TYPE.small }), 4);
}

function whole(pieces: readonly Piece[], { pageHeight }: LayoutContext): readonly Piece[] {
  const height = pieces.reduce((sum, one) => sum + one.gap + one.height, 0);
  return height <= KEPT_WHOLE * pageHeight ? together(pieces) : pieces;
}
