import type { StyledText } from './styled-text.js';
import type { TypeStyle } from './type-styles.js';

/** Width in points of text in a style. */
export type Measure = (text: string, style: TypeStyle) => number;

/**
 * A stretch that a line may not break, with the space after it. `ends` says what follows:
 * another unit, or a forced new line.
 */
export interface Unit {
  readonly parts: readonly StyledText[];
  readonly ends: 'unit' | 'line';
}

// Between spaces and a word, around a forced new line, and after a hyphen, dash or slash that
// stands between letters.
const BREAKS = /(?<= )(?=[^ ])|(?=\n)|(?<=\n)|(?<=[\p{L})][-–—/])(?=\p{L})/u;

/** Cuts styled text into units. A word in two styles stays one unit. */
export function unitsOf(runs: readonly StyledText[]): readonly Unit[] {
  const units: Unit[] = [];
  let parts: StyledText[] = [];
  for (const piece of runs.flatMap(cut)) {
    const forced = piece.text === '\n';
    if (!forced) parts.push(piece);
    if (forced || /[ \-–—/]$/.test(piece.text)) {
      units.push({ parts, ends: forced ? 'line' : 'unit' });
      parts = [];
    }
  }
  return parts.length > 0 ? [...units, { parts, ends: 'unit' }] : units;
}

function cut({ text, style }: StyledText): readonly StyledText[] {
  return text
    .replace(/ +/g, ' ')
    .split(BREAKS)
    .filter((piece) => piece !== '')
    .map((piece) => ({ text: piece, style }));
}

/** Width of a unit with the space after it. */
export function unitWidth(unit: Unit, measure: Measure): number {
  return unit.parts.reduce((sum, part) => sum + measure(part.text, part.style), 0);
}
