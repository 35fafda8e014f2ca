/** Whether a font has a shape for a code point. */
export type HasGlyph = (codePoint: number) => boolean;

const REPLACEMENTS: ReadonlyMap<string, string> = new Map([
  ['\u2011', '-'],
  ['\u2010', '-'],
  ['\u2012', '\u2013'],
  ['\u202f', '\u00a0'],
  ['\u2009', '\u00a0'],
  ['\u25a1', '\u2610'],
]);

/**
 * Text that the font can show. Controls become spaces and invisible marks go. A letter with an
 * accent that the font lacks loses the accent; any other missing character is printed as its
 * number, such as `[U+4E2D]`, so that nothing vanishes and no empty box is drawn.
 */
export function printable(text: string, hasGlyph: HasGlyph): string {
  return [...text.normalize('NFC')].map((character) => shown(character, hasGlyph)).join('');
}

function shown(character: string, hasGlyph: HasGlyph): string {
  if (character === '\n') return character;
  if (/\p{Cc}|\p{Zl}|\p{Zp}/u.test(character)) return ' ';
  if (/\p{Cf}/u.test(character)) return '';
  if (hasGlyph(codePoint(character))) return character;
  return REPLACEMENTS.get(character) ?? withoutAccent(character, hasGlyph) ?? number(character);
}

function withoutAccent(character: string, hasGlyph: HasGlyph): string | undefined {
  const [base] = [...character.normalize('NFKD')];
  const known = base !== undefined && base !== character && hasGlyph(codePoint(base));
  return known ? base : undefined;
}

function number(character: string): string {
  return `[U+${codePoint(character).toString(16).toUpperCase().padStart(4, '0')}]`;
}

function codePoint(character: string): number {
  return character.codePointAt(0) ?? 0;
}
