import type { Column, Table } from '#report/document/table.js';
import type { LayoutContext } from '../blocks/layout-context.js';
import type { StyledText } from '../text/styled-text.js';
import { styledRuns } from '../text/styled-text.js';
import type { TypeStyle } from '../text/type-styles.js';
import { emboldened } from '../text/type-styles.js';
import { unitsOf, unitWidth } from '../text/units.js';
import { columnWidths } from './column-widths.js';
import type { TableLook } from './table-look.js';

/** Where the text of one column stands; `x` counts from the table's left edge. */
export interface GridColumn {
  readonly x: number;
  readonly width: number;
  readonly align: Column['align'];
}

// No single word takes more than this part of the table, so that the other columns stay legible.
const WIDEST_WORD = 0.35;

/** The text areas of a table's columns. The outer columns are flush with the text above. */
export function tableGrid(table: Table, look: TableLook, context: LayoutContext) {
  const { columns } = table;
  const wishes = columns.map((column, index) => ({
    weight: column.weight,
    minimum: Math.min(
      WIDEST_WORD * context.width,
      longestWord(table, index, { context, look }) + 2 * look.padX + 0.01,
    ),
  }));
  let left = 0;
  return columnWidths(wishes, context.width).map((width, index): GridColumn => {
    const padLeft = index === 0 ? 0 : look.padX;
    const padRight = index === columns.length - 1 ? 0 : look.padX;
    const column = { x: left + padLeft, width: width - padLeft - padRight };
    left += width;
    return { ...column, align: columns[index]?.align ?? 'left' };
  });
}

interface Setting {
  readonly context: LayoutContext;
  readonly look: TableLook;
}

function longestWord(table: Table, index: number, { context, look }: Setting): number {
  const { canvas } = context;
  const header = styledRuns(table.columns[index]?.header ?? '', emboldened(look.cell));
  const texts = [
    header,
    ...table.rows.map((row) => styledRuns(row.cells[index] ?? '', strong(row, look))),
  ];
  const shown = (run: StyledText) => ({ ...run, text: canvas.shown(run) });
  const units = texts.flatMap((runs) => unitsOf(runs.map(shown)));
  return Math.max(0, ...units.map((unit) => unitWidth(unit, canvas.measure)));
}

function strong(row: Table['rows'][number], look: TableLook): TypeStyle {
  return row.emphasis === 'total' ? emboldened(look.cell) : look.cell;
}
