import type { Inline } from '#report/document/inline.js';
import type { List, ListMarker } from '#report/document/text-blocks.js';
import type { Piece } from '../pieces/piece.js';
import { spaced } from '../pieces/piece.js';
import type { Tag } from '../tags/tag-tree.js';
import { styledRuns } from '../text/styled-text.js';
import type { TypeStyle } from '../text/type-styles.js';
import { TYPE } from '../text/type-styles.js';
import type { LayoutContext } from './layout-context.js';
import { baseline, textPieces } from './text-pieces.js';

const NUMBERING: Record<ListMarker, string> = {
  bullet: 'Disc',
  number: 'Decimal',
  checkbox: 'Square',
};

/** Type of a list and the distance of its text from its markers' edge, in points. */
export interface ListLook {
  readonly style: TypeStyle;
  readonly indent: number;
}

const BODY: ListLook = { style: TYPE.body, indent: 18 };

/** A list with hanging markers: L, LI, Lbl and LBody. */
export function listPieces(
  block: List,
  context: LayoutContext,
  look: ListLook = BODY,
): readonly Piece[] {
  const attributes = { O: 'List', ListNumbering: NUMBERING[block.marker] };
  const tag = context.tags.add(context.parent, 'L', { attributes });
  return block.items.flatMap((text, index) =>
    spaced(
      itemPieces({ list: tag, marker: marker(block.marker, index), text, look }, context),
      index === 0 ? 6 : 3,
    ),
  );
}

interface Item {
  readonly list: Tag;
  readonly marker: string;
  readonly text: Inline;
  readonly look: ListLook;
}

function itemPieces(item: Item, context: LayoutContext): readonly Piece[] {
  const { style, indent } = item.look;
  const parent = context.tags.add(item.list, 'LI');
  const label = context.tags.add(parent, 'Lbl');
  const body = context.tags.add(parent, 'LBody');
  const runs = styledRuns(item.text, style);
  const lines = textPieces(context, { tag: body, runs, style, indent });
  return lines.map((line, index) => (index > 0 ? line : { ...line, draw: drawFirst(line) }));

  function drawFirst(line: Piece): Piece['draw'] {
    return (at) => {
      context.tags.content(label, () =>
        context.canvas.drawText(
          { text: item.marker, style },
          { x: at.x + 2, y: at.y + baseline(style) },
        ),
      );
      line.draw(at);
    };
  }
}

function marker(kind: ListMarker, index: number): string {
  switch (kind) {
    case 'bullet':
      return '•';
    case 'number':
      return `${index + 1}.`;
    case 'checkbox':
      return '☐';
  }
}
