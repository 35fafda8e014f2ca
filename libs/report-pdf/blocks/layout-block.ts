import type { Block } from '#report/document/plan-document.js';
import type { Piece } from '../pieces/piece.js';
import { calloutPieces } from './callout.js';
import { figurePieces } from './figure.js';
import { headingPieces } from './heading.js';
import { keyFactsPieces } from './key-facts.js';
import type { LayoutContext } from './layout-context.js';
import { listPieces } from './list.js';
import { optionsPieces } from './options.js';
import { paragraphPieces } from './paragraph.js';
import { signaturePieces } from './signatures.js';
import { tablePieces } from './table.js';

/** The pieces of all blocks, in order. */
export function layoutBlocks(blocks: readonly Block[], context: LayoutContext): readonly Piece[] {
  const pieces: Piece[] = [];
  let starts: Piece['starts'] = 'anywhere';
  for (const block of blocks) {
    if (block.kind === 'page-break') {
      starts = 'page';
      continue;
    }
    const [first, ...rest] = layoutBlock(block, context);
    if (first) pieces.push({ ...first, starts }, ...rest);
    starts = 'anywhere';
  }
  return pieces;
}

function layoutBlock(
  block: Exclude<Block, { readonly kind: 'page-break' }>,
  context: LayoutContext,
): readonly Piece[] {
  switch (block.kind) {
    case 'heading':
      return headingPieces(block, context);
    case 'paragraph':
      return paragraphPieces(block, context);
    case 'list':
      return listPieces(block, context);
    case 'key-facts':
      return keyFactsPieces(block, context);
    case 'table':
      return tablePieces(block, context);
    case 'figure':
      return figurePieces(block, context);
    case 'callout':
      return calloutPieces(block, context);
    case 'options':
      return optionsPieces(block, context);
    case 'signatures':
      return signaturePieces(block, context);
  }
}
