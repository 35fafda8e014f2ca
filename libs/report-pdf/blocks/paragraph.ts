import type { Paragraph } from '#report/document/text-blocks.js';
import type { Piece } from '../pieces/piece.js';
import { spaced } from '../pieces/piece.js';
import { styledRuns } from '../text/styled-text.js';
import { TYPE } from '../text/type-styles.js';
import type { LayoutContext } from './layout-context.js';
import { textPieces } from './text-pieces.js';

const LOOK = {
  lead: { style: TYPE.lead, gap: 10 },
  body: { style: TYPE.body, gap: 7 },
  small: { style: TYPE.small, gap: 5 },
} as const;

/** A paragraph set ragged right. */
export function paragraphPieces(block: Paragraph, context: LayoutContext): readonly Piece[] {
  const { style, gap } = LOOK[block.size];
  const tag = context.tags.add(context.parent, 'P');
  return spaced(textPieces(context, { tag, runs: styledRuns(block.text, style), style }), gap);
}
