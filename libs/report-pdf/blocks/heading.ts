import type { Heading } from '#report/document/text-blocks.js';
import type { Piece } from '../pieces/piece.js';
import { spaced } from '../pieces/piece.js';
import { TYPE } from '../text/type-styles.js';
import type { LayoutContext } from './layout-context.js';
import { textPieces } from './text-pieces.js';

const LOOK = {
  1: { style: TYPE.heading1, gap: 26, type: 'H2' },
  2: { style: TYPE.heading2, gap: 19, type: 'H3' },
  3: { style: TYPE.heading3, gap: 14, type: 'H4' },
} as const;

/** A heading, kept with what follows. The document's title is H1, so level 1 is H2. */
export function headingPieces(block: Heading, context: LayoutContext): readonly Piece[] {
  const { style, gap, type } = LOOK[block.level];
  const tag = context.tags.add(context.parent, type);
  const runs = [{ text: block.text, style }];
  const lines = textPieces(context, { tag, runs, style });
  const noted = lines.map((line, index): Piece => {
    const draw: Piece['draw'] = (at) => {
      if (index === 0) context.bookmarks.note(block.level, block.text, at.y);
      line.draw(at);
    };
    return { ...line, draw, keep: 'next' };
  });
  return spaced(noted, gap);
}
