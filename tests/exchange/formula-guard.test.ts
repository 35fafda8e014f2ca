import fc from 'fast-check';
import { expect, test } from 'vitest';
import { guarded, unguarded } from '#exchange/table/formula-guard.js';

const text = fc.oneof(
  fc.string({ unit: 'binary' }),
  fc
    .tuple(fc.constantFrom("'", "''", '=', '+', '-', '@', '\t', '\r', '\n', '＝'), fc.string())
    .map(([start, rest]) => start + rest),
);

test('no text that goes out begins as a formula, and each comes back as it was', () => {
  fc.assert(
    fc.property(text, (given) => {
      expect(guarded(given)).not.toMatch(/^[=+\-@\t\r\n＝＋－＠]/u);
      expect(unguarded(guarded(given))).toBe(given);
    }),
  );
});

test.each(['=HYPERLINK("x")', '+1', '-1', '@SUM(A1)', '\tcmd', "'=1+1"])(
  '%j gets an apostrophe',
  (given) => expect(guarded(given)).toBe(`'${given}`),
);

test.each(['Kiln Hall', "'quoted'", '2 - 3', ''])('%j is left as it is', (given) => {
  expect(guarded(given)).toBe(given);
  expect(unguarded(given)).toBe(given);
});
