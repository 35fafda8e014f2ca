import { describe, expect, test } from 'vitest';
import { type InputRange, rangeFindings, rejected } from '#estimating/finding.js';

const range: InputRange = {
  unit: 'in',
  plausible: [2, 12],
  possible: [0, 36],
  remedy: 'Give inches.',
};
const severities = (value: number) =>
  rangeFindings('depth', value, range).map(({ severity }) => severity);

describe('a value against its range', () => {
  test('is unusual outside of what is plausible, refused outside of what is possible', () => {
    expect([2, 7, 12].flatMap(severities)).toEqual([]);
    expect([0, 1.99, 12.01, 36].flatMap(severities)).toEqual(['warn', 'warn', 'warn', 'warn']);
    expect([-0.01, 36.01, NaN, Infinity].flatMap(severities)).toEqual(Array(4).fill('reject'));
  });

  test('is told with the bounds that it breaks', () => {
    expect(rangeFindings('depth', 14, range)).toEqual([
      {
        field: 'depth',
        value: 14,
        severity: 'warn',
        problem: '14 in is unusual: expected 2 to 12 in',
        remedy: 'Give inches.',
      },
    ]);
    const [impossible] = rangeFindings('depth', 40, range);
    expect(impossible?.problem).toBe('40 in cannot be right: expected 0 to 36 in');
    const [unread] = rangeFindings('depth', NaN, range);
    expect(unread).toMatchObject({ problem: 'is not a number', remedy: 'Give inches.' });
  });
});

test('one refusal among warnings refuses', () => {
  const found = [...rangeFindings('depth', 14, range), ...rangeFindings('depth', 40, range)];
  expect(rejected(found)).toBe(true);
  expect(rejected(found.slice(0, 1))).toBe(false);
});
