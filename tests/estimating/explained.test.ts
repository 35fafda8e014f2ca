import { describe, expect, test } from 'vitest';
import { explained, given, sumOf } from '#estimating/explained.js';
import { rejected } from '#estimating/finding.js';

describe('explained numbers', () => {
  const care = given('care', { value: 200, unit: 'h/yr' }, 'care table');

  test('a given one is the end of a branch', () => {
    expect(care).toEqual({
      name: 'care',
      value: 200,
      unit: 'h/yr',
      formula: 'given',
      source: 'care table',
      inputs: [],
    });
  });

  test('a computed one carries its formula, and arithmetic where no source is given', () => {
    const node = explained({
      name: 'half',
      value: 100,
      unit: 'h/yr',
      formula: 'care / 2',
      inputs: [care],
    });
    expect(node.source).toBe('arithmetic');
    expect(explained({ ...node, source: 'handbook' }).source).toBe('handbook');
  });

  test('a sum opens to its parts', () => {
    const sum = sumOf('both', 'h/yr', [care, care]);
    expect(sum).toEqual({
      name: 'both',
      value: 400,
      unit: 'h/yr',
      formula: 'sum of the parts',
      source: 'arithmetic',
      inputs: [care, care],
    });
    expect(sumOf('none', 'h/yr', []).value).toBe(0);
  });

  test('one unknown part leaves a sum unknown, wherever it stands', () => {
    const unknown = given('harvest', { value: null, unit: 'h/yr' }, 'not measured');
    expect(sumOf('both', 'h/yr', [care, unknown]).value).toBeNull();
    expect(sumOf('both', 'h/yr', [unknown, care]).value).toBeNull();
  });

  test('benefits of different units are never summed', () => {
    const food = given('food', { value: 900, unit: 'lb/yr' }, 'bed x yield');
    expect(() => sumOf('benefit', 'h/yr', [care, food])).toThrow(
      'benefit adds h/yr, but food is in lb/yr',
    );
  });
});

describe('findings', () => {
  const finding = { field: 'ph', value: 9, problem: '', remedy: '' };

  test('stop an estimate only where one is a rejection', () => {
    expect(rejected([])).toBe(false);
    expect(rejected([{ ...finding, severity: 'warn' }])).toBe(false);
    expect(
      rejected([
        { ...finding, severity: 'warn' },
        { ...finding, severity: 'reject' },
      ]),
    ).toBe(true);
  });
});
