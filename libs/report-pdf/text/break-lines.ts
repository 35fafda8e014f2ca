import { splitUnit } from './split-unit.js';
import type { StyledText } from './styled-text.js';
import type { Measure, Unit } from './units.js';
import { unitsOf, unitWidth } from './units.js';

/** One set line. `width` leaves out the space at its end. */
export interface TextLine {
  readonly parts: readonly StyledText[];
  readonly width: number;
}

/**
 * Breaks text into lines no wider than `width`, each word as early as it fits. A word wider than
 * the whole line is cut between characters. The text of all lines joined is the text given,
 * apart from doubled spaces and forced new lines.
 */
export function breakLines(
  runs: readonly StyledText[],
  width: number,
  measure: Measure,
): readonly TextLine[] {
  const units = unitsOf(runs).flatMap((unit) => splitUnit(unit, width, measure));
  const lines: Unit[][] = [[]];
  let used = 0;
  for (const unit of units) {
    const wide = unitWidth(unit, measure);
    if (used > 0 && used + wide > width) {
      lines.push([]);
      used = 0;
    }
    lines.at(-1)?.push(unit);
    used += wide;
    if (unit.ends === 'line') {
      lines.push([]);
      used = 0;
    }
  }
  return lines.map((line) => setLine(line, measure));
}

function setLine(units: readonly Unit[], measure: Measure): TextLine {
  const parts = merged(units.flatMap((unit) => unit.parts));
  const last = parts.at(-1);
  const space = last && last.text.endsWith(' ') ? measure(' ', last.style) : 0;
  const width = parts.reduce((sum, part) => sum + measure(part.text, part.style), 0);
  return { parts, width: width - space };
}

function merged(parts: readonly StyledText[]): readonly StyledText[] {
  const joined: StyledText[] = [];
  for (const part of parts) {
    const last = joined.at(-1);
    if (last && sameStyle(last, part)) {
      joined[joined.length - 1] = { text: last.text + part.text, style: last.style };
    } else {
      joined.push(part);
    }
  }
  return joined;
}

function sameStyle(a: StyledText, b: StyledText): boolean {
  return a.style.face === b.style.face && a.style.family === b.style.family;
}
