import type { StyledText } from './styled-text.js';
import type { Measure, Unit } from './units.js';
import { unitWidth } from './units.js';

const characters = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** Cuts a unit that is wider than the line into pieces that fit; others come back as they are. */
export function splitUnit(unit: Unit, width: number, measure: Measure): readonly Unit[] {
  if (unitWidth(unit, measure) <= width) return [unit];
  const pieces: StyledText[][] = [[]];
  let used = 0;
  for (const part of singleCharacters(unit.parts)) {
    const wide = measure(part.text, part.style);
    if (used > 0 && used + wide > width) {
      pieces.push([]);
      used = 0;
    }
    pieces.at(-1)?.push(part);
    used += wide;
  }
  return pieces.map((parts, index) => ({
    parts: joined(parts),
    ends: index === pieces.length - 1 ? unit.ends : 'unit',
  }));
}

function singleCharacters(parts: readonly StyledText[]): readonly StyledText[] {
  return parts.flatMap(({ text, style }) =>
    [...characters.segment(text)].map(({ segment }) => ({ text: segment, style })),
  );
}

function joined(parts: readonly StyledText[]): readonly StyledText[] {
  const result: StyledText[] = [];
  for (const part of parts) {
    const last = result.at(-1);
    if (last && last.style === part.style) {
      result[result.length - 1] = { text: last.text + part.text, style: part.style };
    } else {
      result.push(part);
    }
  }
  return result;
}
