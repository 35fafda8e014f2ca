import fc from 'fast-check';
import { expect, test } from 'vitest';
import { breakLines } from '#report-pdf/text/break-lines.js';
import type { StyledText } from '#report-pdf/text/styled-text.js';
import { emboldened, TYPE } from '#report-pdf/text/type-styles.js';
import type { Measure } from '#report-pdf/text/units.js';

/** Ten points a character, twelve in bold. */
const measure: Measure = (text, style) => [...text].length * (style.face === 'bold' ? 12 : 10);
const plain = (text: string): StyledText => ({ text, style: TYPE.body });
const bold = (text: string): StyledText => ({ text, style: emboldened(TYPE.body) });
const texts = (runs: readonly StyledText[], width: number) =>
  breakLines(runs, width, measure).map((line) => line.parts.map((part) => part.text).join(''));

const words = fc.string({
  unit: fc.constantFrom('a', 'b', 'é', '-', '/', ' ', '\n', '1'),
  maxLength: 80,
});
const runs = fc.array(fc.tuple(words, fc.constantFrom(plain, bold)), { maxLength: 4 });

test('no line is wider than the width, and no letter is lost', () => {
  fc.assert(
    fc.property(runs, fc.integer({ min: 24, max: 200 }), (list, width) => {
      const given = list.map(([text, make]) => make(text));
      const lines = breakLines(given, width, measure);
      for (const line of lines) expect(line.width).toBeLessThanOrEqual(width);
      const letters = (all: readonly StyledText[]) =>
        all
          .map(({ text, style }) => `${style.face}:${text.replace(/[ \n]/g, '')}`)
          .join('')
          .replaceAll(/(regular|bold):/g, '');
      expect(letters(lines.flatMap((line) => line.parts))).toBe(letters(given));
    }),
  );
});

test('lines break at spaces and after hyphens between letters', () => {
  expect(texts([plain('one two-three')], 80)).toEqual(['one two-', 'three']);
  expect(texts([plain('one two three')], 80)).toEqual(['one two ', 'three']);
});

test('dates, ranges of numbers and negative numbers stay whole', () => {
  expect(texts([plain('in 2026-02-14')], 100)).toEqual(['in ', '2026-02-14']);
  expect(texts([plain('a b -30 %')], 60)).toEqual(['a b ', '-30 % '.trim()]);
});

test('a word in two styles is not broken between them', () => {
  expect(texts([plain('to '), bold('East'), plain(', now')], 85)).toEqual(['to ', 'East, ', 'now']);
});

test('a word wider than the line is cut', () => {
  expect(texts([plain('abcdefgh')], 30)).toEqual(['abc', 'def', 'gh']);
});

test('a line feed starts a line', () => {
  expect(texts([plain('a\nb')], 100)).toEqual(['a', 'b']);
});
