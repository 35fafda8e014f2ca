import { expect, test } from 'vitest';
import { printable } from '#report-pdf/text/printable.js';

const ascii = (codePoint: number) => codePoint >= 32 && codePoint < 127;

test.each([
  ['plain', 'plain'],
  ['caf\u00e9', 'cafe'],
  ['cafe\u0301', 'cafe'],
  ['non\u2011breaking', 'non-breaking'],
  ['soft\u00adhyphen', 'softhyphen'],
  ['tab\there', 'tab here'],
  ['two\nlines', 'two\nlines'],
  ['中', '[U+4E2D]'],
  ['🌱', '[U+1F331]'],
])('%j is shown as %j with a font of ASCII letters', (text, shown) => {
  expect(printable(text, ascii)).toBe(shown);
});

test('letters of the font are kept', () => {
  expect(printable('Łódź ½ ≥', () => true)).toBe('Łódź ½ ≥');
});
