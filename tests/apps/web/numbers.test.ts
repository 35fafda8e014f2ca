import { expect, test } from 'vitest';
import {
  amount,
  counted,
  dateInWords,
  dollars,
  gapPercent,
  wholeNumber,
} from '#apps/web/format/numbers.js';
import { ended } from '#apps/web/format/ended.js';
import { withoutCapital } from '#apps/web/format/without-capital.js';

test('dollars are not shown finer than they are known', () => {
  expect(dollars(0)).toBe('$0');
  expect(dollars(-20)).toBe('$0');
  expect(dollars(849)).toBe('$800');
  expect(dollars(9_949)).toBe('$9,900');
  expect(dollars(71_499)).toBe('$71,000');
  expect(dollars(-12_600)).toBe('-$13,000');
});

test('a gap that is not zero never reads as zero', () => {
  expect(gapPercent(0)).toBe('0.0%');
  expect(gapPercent(0.0001)).toBe('under 0.1%');
  expect(gapPercent(0.0323)).toBe('3.2%');
});

test('hours are whole, small amounts have one decimal', () => {
  expect(wholeNumber(1_357.5)).toBe('1,358');
  expect(wholeNumber(-0.2)).toBe('0');
  expect(amount(2.44)).toBe('2.4');
  expect(amount(2_868.4)).toBe('2,868');
});

test('counts agree with their noun', () => {
  expect(counted(1, 'site', 'sites')).toBe('1 site');
  expect(counted(0, 'site', 'sites')).toBe('0 sites');
  expect(counted(1_200, 'site', 'sites')).toBe('1,200 sites');
});

test('a date stays the day it names, wherever the reader is', () => {
  expect(dateInWords('2027-07-01')).toBe('July 1, 2027');
  expect(dateInWords('spring 2027')).toBe('spring 2027');
});

test('a text becomes a sentence, and goes on within one, without harm to names', () => {
  expect(['A drawn line is no locate', 'Done.', ''].map(ended)).toEqual([
    'A drawn line is no locate.',
    'Done.',
    '',
  ]);
  expect(
    ['Seeing how far', 'TVU-03 forced', 'FY28 alone', 'futures met'].map(withoutCapital),
  ).toEqual(['seeing how far', 'TVU-03 forced', 'FY28 alone', 'futures met']);
});
