import fc from 'fast-check';
import { expect, test } from 'vitest';
import { columnWidths } from '#report-pdf/table/column-widths.js';

const wish = fc.record({
  weight: fc.double({ min: 0.1, max: 10, noNaN: true }),
  minimum: fc.double({ min: 0, max: 200, noNaN: true }),
});
const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);

test('widths add up to the table, and no column is narrower than its longest word if all fit', () => {
  fc.assert(
    fc.property(fc.array(wish, { minLength: 1, maxLength: 12 }), (wishes) => {
      const widths = columnWidths(wishes, 468);
      expect(sum(widths)).toBeCloseTo(468, 6);
      if (sum(wishes.map((one) => one.minimum)) > 468) return;
      widths.forEach((width, n) => expect(width).toBeGreaterThanOrEqual(wishes[n]!.minimum - 1e-9));
    }),
  );
});

test('with room for all words the weights rule', () => {
  const widths = columnWidths(
    [
      { weight: 3, minimum: 10 },
      { weight: 1, minimum: 10 },
    ],
    400,
  );
  expect(widths).toEqual([300, 100]);
});

test('a long word takes its room from the others by weight', () => {
  const wishes = [
    { weight: 1, minimum: 200 },
    { weight: 2, minimum: 10 },
    { weight: 1, minimum: 10 },
  ];
  const widths = columnWidths(wishes, 400);
  [200, 400 / 3, 200 / 3].forEach((width, n) => expect(widths[n]).toBeCloseTo(width, 9));
});

test('where not all words fit, only the longest are cut', () => {
  const wishes = [50, 300, 60, 400].map((minimum) => ({ weight: 1, minimum }));
  expect(columnWidths(wishes, 410)).toEqual([50, 150, 60, 150]);
});
