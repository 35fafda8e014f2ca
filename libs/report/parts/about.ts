import type { Block } from '../document/plan-document.js';
import { bold } from '../document/inline.js';
import { smallPrint } from '../document/text-blocks.js';

/** What the brief is not. */
export function aboutBlocks(): readonly Block[] {
  return [
    smallPrint(
      bold('What this document is not. '),
      'It is a planning aid: no approval, design, permit, clearance of soil or utilities, and no promise of money or positions. Local codes, the institution’s own offices and licensed practice decide wherever they differ. People approve a plan; a solver’s plan is advice.',
    ),
  ];
}
