import type { Fact, KeyFacts } from '#report/document/key-facts.js';
import type { Point } from '#report/document/drawing.js';
import type { Piece } from '../pieces/piece.js';
import { piece, spaced, together } from '../pieces/piece.js';
import type { Tag } from '../tags/tag-tree.js';
import type { SetCell } from '../table/cells.js';
import { drawCell } from '../table/cells.js';
import { styledRuns } from '../text/styled-text.js';
import type { TypeStyle } from '../text/type-styles.js';
import { TYPE } from '../text/type-styles.js';
import type { LayoutContext } from './layout-context.js';
import { within } from './layout-context.js';

const GUTTER = 18;
const LABEL_SHARE = 0.36;
const PAD = 2.5;

/**
 * Labeled values as a table of row headers and values. Two columns are read down the first,
 * then down the second.
 */
export function keyFactsPieces(block: KeyFacts, context: LayoutContext): readonly Piece[] {
  const table = context.tags.add(context.parent, 'Table');
  const width = (context.width - (block.columns - 1) * GUTTER) / block.columns;
  const body = context.tags.add(table, 'TBody');
  const narrow = within(context, { width, parent: body });
  const facts = block.facts.map((fact) => setFact(fact, narrow));
  const perColumn = Math.ceil(facts.length / block.columns);
  const strips = Array.from({ length: perColumn }, (_, index) => {
    const cells = [facts[index], facts[index + perColumn]].filter((one) => one !== undefined);
    const height = Math.max(...cells.map((cell) => cell.height));
    return piece(height, (at) =>
      cells.forEach((cell, n) => cell.draw({ x: at.x + n * (width + GUTTER), y: at.y }, height)),
    );
  });
  return spaced(together(strips), 10);
}

interface SetFact {
  readonly height: number;
  readonly draw: (at: Point, height: number) => void;
}

function setFact(fact: Fact, context: LayoutContext): SetFact {
  const row = context.tags.add(context.parent, 'TR');
  const header = context.tags.add(row, 'TH', { attributes: { O: 'Table', Scope: 'Row' } });
  const value = context.tags.add(row, 'TD');
  const labelWidth = LABEL_SHARE * context.width;
  const label = cell(context, fact.label, { style: TYPE.factLabel, x: 0, width: labelWidth - 8 });
  const words = cell(context, fact.value, {
    style: TYPE.factValue,
    x: labelWidth,
    width: context.width - labelWidth,
  });
  const count = Math.max(label.lines.length, words.lines.length);
  return {
    height: count * TYPE.factValue.leading + 2 * PAD,
    draw: (at, height) => {
      const top = { x: at.x, y: at.y + PAD };
      underline(context, at, height);
      drawTagged({ tag: header, cell: label, style: TYPE.factLabel }, top, context);
      drawTagged({ tag: value, cell: words, style: TYPE.factValue }, top, context);
    },
  };
}

interface Place {
  readonly style: TypeStyle;
  readonly x: number;
  readonly width: number;
}

function cell(context: LayoutContext, text: Fact['value'], place: Place): SetCell {
  const { style, x, width } = place;
  const lines = context.canvas.lines(styledRuns(text, style), width);
  return { column: { x, width, align: 'left' }, lines };
}

interface TaggedCell {
  readonly tag: Tag;
  readonly cell: SetCell;
  readonly style: TypeStyle;
}

function drawTagged({ tag, cell: set, style }: TaggedCell, at: Point, context: LayoutContext) {
  context.tags.content(tag, () => drawCell(set, at, { context, style }));
}

function underline({ canvas, tags, width }: LayoutContext, at: Point, height: number): void {
  const y = at.y + height;
  tags.artifact('Layout', () =>
    canvas.drawRule({ x: at.x, y }, { x: at.x + width, y }, { color: 'faint', width: 0.5 }),
  );
}
