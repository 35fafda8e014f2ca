import type { Point } from '#report/document/drawing.js';
import type { Table } from '#report/document/table.js';
import type { LayoutContext } from '../blocks/layout-context.js';
import { baseline } from '../blocks/text-pieces.js';
import type { Piece, Repeated } from '../pieces/piece.js';
import { piece } from '../pieces/piece.js';
import type { Tag } from '../tags/tag-tree.js';
import { emboldened, TYPE } from '../text/type-styles.js';
import type { SetCell } from './cells.js';
import { drawCell, lineCount, setCells } from './cells.js';
import type { GridColumn } from './grid.js';
import type { TableLook } from './table-look.js';

/** What the rows of one table share. */
export interface TableSetting {
  readonly table: Table;
  readonly look: TableLook;
  readonly grid: readonly GridColumn[];
  readonly tag: Tag;
  readonly context: LayoutContext;
}

const CONTINUED = { ...TYPE.caption, face: 'italic' } as const;

/** The header row: tagged once in THead, and as running matter on each page after. */
export function headerRow(setting: TableSetting): { first: Piece; repeated: Repeated } {
  const { context, look, table } = setting;
  const style = emboldened(look.cell);
  const texts = table.columns.map(({ header }) => [{ text: header, style }]);
  const cells = setCells(texts, setting.grid, context);
  const height = lineCount(cells) * style.leading + 2 * look.padY + 1;
  const tags = headerTags(setting);
  const drawCells = (at: Point, mark: (index: number, draw: () => void) => void) => {
    rules(setting, at, height);
    cells.forEach((cell, index) =>
      mark(index, () => drawCell(cell, lowered(cell, at), { context, style })),
    );
  };
  const lowered = (cell: SetCell, at: Point) => ({
    x: at.x,
    y: at.y + height - look.padY - cell.lines.length * style.leading,
  });
  return {
    first: piece(height, (at) => drawCells(at, mark(tags, context)), { gap: 5, keep: 'next' }),
    repeated: repeatedHeader(setting, {
      height,
      draw: (at) => drawCells(at, (_index, draw) => context.tags.artifact('Pagination', draw)),
    }),
  };
}

function mark(tags: readonly Tag[], { tags: tree }: LayoutContext) {
  return (index: number, draw: () => void) => {
    const tag = tags[index];
    if (tag) tree.content(tag, draw);
  };
}

function headerTags({ context, tag, table }: TableSetting): readonly Tag[] {
  const row = context.tags.add(context.tags.add(tag, 'THead'), 'TR');
  const attributes = { O: 'Table', Scope: 'Column' };
  return table.columns.map(() => context.tags.add(row, 'TH', { attributes }));
}

function rules({ context }: TableSetting, at: Point, height: number): void {
  const right = at.x + context.width;
  const across = (y: number, width: number) =>
    context.canvas.drawRule({ x: at.x, y }, { x: right, y }, { color: 'ink', width });
  context.tags.artifact('Layout', () => {
    across(at.y, 1);
    across(at.y + height, 0.5);
  });
}

function repeatedHeader({ context, table }: TableSetting, header: Repeated): Repeated {
  const runs = [{ text: `${table.caption}, continued`, style: CONTINUED }];
  const lines = context.canvas.lines(runs, context.width);
  const top = lines.length * CONTINUED.leading + 5;
  const draw = (at: Point) => {
    context.tags.artifact('Pagination', () =>
      lines.forEach((line, index) =>
        context.canvas.drawLine(line, {
          x: at.x,
          y: at.y + index * CONTINUED.leading + baseline(CONTINUED),
        }),
      ),
    );
    header.draw({ x: at.x, y: at.y + top });
  };
  return { height: top + header.height, draw };
}
