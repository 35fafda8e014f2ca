import type { Block } from '#report/document/plan-document.js';
import type { Piece } from '../pieces/piece.js';
import { spaced } from '../pieces/piece.js';
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

type Laid = Exclude<Block, { readonly kind: 'page-break' }>;

// Least space after a block that is not running text, before whatever follows it.
const SPACE_AFTER: Partial<Record<Laid['kind'], number>> = {
  'key-facts': 12,
  table: 14,
  figure: 16,
  callout: 12,
  options: 14,
  signatures: 16,
};

/** The pieces of all blocks, in order. */
export function layoutBlocks(blocks: readonly Block[], context: LayoutContext): readonly Piece[] {
  const pieces: Piece[] = [];
  let starts: Piece['starts'] = 'anywhere';
  let gap = 12;
  for (const [index, block] of blocks.entries()) {
    if (block.kind === 'page-break') {
      starts = 'page';
      continue;
    }
    const laid = spaced(layoutBlock(block, context), gap);
    const [first, ...rest] = introduces(blocks, index) ? laid.map(kept) : laid;
    const before = pieces.at(-1);
    if (before && closes(blocks, index)) pieces.splice(-1, 1, kept(before));
    if (first) pieces.push({ ...first, starts }, ...rest);
    starts = 'anywhere';
    gap = SPACE_AFTER[block.kind] ?? 0;
  }
  return pieces;
}

/** Whether a block stands between a heading and a figure, table or box that it introduces. */
function introduces(blocks: readonly Block[], index: number): boolean {
  const after = blocks[index + 1]?.kind;
  const shows = after === 'figure' || after === 'table' || after === 'options';
  return shows && blocks[index]?.kind === 'paragraph' && blocks[index - 1]?.kind === 'heading';
}

/** Whether a block is the closing paragraph, which never stands alone on a page. */
function closes(blocks: readonly Block[], index: number): boolean {
  const isLast = index === blocks.length - 1;
  return isLast && blocks[index]?.kind === 'paragraph' && blocks[index - 1]?.kind !== 'page-break';
}

function kept(one: Piece): Piece {
  return { ...one, keep: 'next' };
}

function layoutBlock(block: Laid, context: LayoutContext): readonly Piece[] {
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
