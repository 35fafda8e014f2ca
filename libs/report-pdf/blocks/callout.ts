import type { Callout } from '#report/document/boxes.js';
import type { Inline } from '#report/document/inline.js';
import type { Piece } from '../pieces/piece.js';
import { spaced, together } from '../pieces/piece.js';
import { styledRuns } from '../text/styled-text.js';
import type { TypeStyle } from '../text/type-styles.js';
import { TYPE } from '../text/type-styles.js';
import { FRAME_PAD, framed } from './frame.js';
import type { LayoutContext } from './layout-context.js';
import { within } from './layout-context.js';
import { textPieces } from './text-pieces.js';

/** A framed box, kept on one page if a page has room for it. */
export function calloutPieces(block: Callout, context: LayoutContext): readonly Piece[] {
  const parent = context.tags.add(context.parent, 'Div');
  const inner = within(context, { parent, width: context.width - 2 * FRAME_PAD });
  const lines = [
    ...boxParagraph(block.title, TYPE.boxTitle, inner),
    ...block.paragraphs.flatMap((text) => spaced(boxParagraph(text, TYPE.boxText, inner), 3)),
  ];
  return spaced(together(framed(lines, block.tone, context)), 12);
}

/** A paragraph inside a box. */
export function boxParagraph(
  text: Inline,
  style: TypeStyle,
  context: LayoutContext,
): readonly Piece[] {
  const tag = context.tags.add(context.parent, 'P');
  return textPieces(context, { tag, runs: styledRuns(text, style), style });
}
