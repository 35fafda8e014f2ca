import { describe, expect, test } from 'vitest';
import { dayInWords, monthInWords } from '#units/dates-in-words.js';
import {
  counted,
  dollarsInWords,
  hoursInWords,
  listInWords,
  ordinal,
  percentInWords,
  squareFeetInWords,
  uncapitalized,
} from '#units/in-words.js';

describe('amounts in words', () => {
  test.each([
    [0, '$0'],
    [12, 'less than $100'],
    [7_449, '$7,400'],
    [9_999, '$10,000'],
    [38_499, '$38,000'],
    [-5_250, 'minus $5,300'],
  ])('%d dollars', (dollars, text) => {
    expect(dollarsInWords(dollars)).toBe(text);
  });

  test.each([
    [0, '0 hours'],
    [0.2, 'less than 1 hour'],
    [1.2, '1 hour'],
    [158.4, '158 hours'],
    [1369.2, '1,369 hours'],
  ])('%d hours', (hours, text) => {
    expect(hoursInWords(hours)).toBe(text);
  });

  test('shares are told to a tenth below 10 %, and never rounded to none', () => {
    expect([0, 0.0004, 0.021, 0.0999, 0.5].map(percentInWords)).toEqual([
      '0%',
      'less than 0.1%',
      '2.1%',
      '10%',
      '50%',
    ]);
  });

  test('counts agree with their nouns', () => {
    expect([counted(1, 'site'), counted(0, 'site'), counted(2, 'is', 'are')]).toEqual([
      '1 site',
      '0 sites',
      '2 are',
    ]);
  });

  test('places, lists and areas', () => {
    expect([1, 2, 3, 4, 11, 12, 13, 21, 22].map(ordinal).join(' ')).toBe(
      '1st 2nd 3rd 4th 11th 12th 13th 21st 22nd',
    );
    expect(listInWords(['a', 'b', 'c'])).toBe('a, b, and c');
    expect(squareFeetInWords(8_949)).toBe('8,900 sq ft');
  });

  test('a name within a sentence keeps the names that are in it', () => {
    const names = ['Native meadow', 'Meadow of Kiln Hall', 'EHS plots', 'ÉCLAIR', 'é', ''];
    expect(names.map(uncapitalized)).toEqual([
      'native meadow',
      'meadow of Kiln Hall',
      'EHS plots',
      'ÉCLAIR',
      'é',
      '',
    ]);
  });
});

describe('dates in words', () => {
  test('months and days', () => {
    expect(monthInWords('2032-11-01')).toBe('November 2032');
    expect(dayInWords('2029-06-30T12:00:00Z')).toBe('June 30, 2029');
  });

  test('what is no date is refused', () => {
    expect(() => monthInWords('soon')).toThrow(RangeError);
  });
});
