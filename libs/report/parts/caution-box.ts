import { caution } from '../document/boxes.js';
import { bold, type Run } from '../document/inline.js';
import type { Block } from '../document/plan-document.js';

/** Cautions in one box, each with its subject in bold: `Digging: first call ...`. */
export function cautionBox(about: string, cautions: readonly string[]): readonly Block[] {
  return cautions.length === 0 ? [] : [caution(about, cautions.map(cautionLine))];
}

function cautionLine(text: string): Run[] {
  const colon = text.indexOf(':') + 1;
  return [bold(text.slice(0, colon)), { text: text.slice(colon) }];
}

/** The same as one paragraph, where a page has no room for a line each. */
export function runOnCautionBox(about: string, cautions: readonly string[]): readonly Block[] {
  return cautions.length === 0
    ? []
    : [caution(about, [cautions.flatMap((text) => [...cautionLine(text), { text: ' ' }])])];
}
