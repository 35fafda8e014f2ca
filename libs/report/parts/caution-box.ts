import { caution } from '../document/boxes.js';
import { bold, type Inline } from '../document/inline.js';
import type { Block } from '../document/plan-document.js';

/** Cautions in one box, each with its subject in bold: `Digging: first call ...`. */
export function cautionBox(about: string, cautions: readonly string[]): readonly Block[] {
  return cautions.length === 0 ? [] : [caution(about, cautions.map(cautionLine))];
}

function cautionLine(text: string): Inline {
  const colon = text.indexOf(':') + 1;
  return [bold(text.slice(0, colon)), { text: text.slice(colon) }];
}
