import fc from 'fast-check';
import { expect, test } from 'vitest';
import { paginate } from '#report-pdf/pieces/paginate.js';
import type { Sized } from '#report-pdf/pieces/paginate.js';

const PAGE = 100;
const sized = (change: Partial<Sized> = {}): Sized => ({
  height: 10,
  gap: 0,
  keep: 'alone',
  starts: 'anywhere',
  ...change,
});
const piece = fc.record<Sized>({
  height: fc.integer({ min: 1, max: 40 }),
  gap: fc.integer({ min: 0, max: 12 }),
  keep: fc.constantFrom('next', 'alone', 'alone'),
  starts: fc.constantFrom('anywhere', 'anywhere', 'anywhere', 'page'),
  repeated: fc.constantFrom({ height: 15 }, { height: 0 }),
});
const pieces = fc.array(piece, { maxLength: 60 });

test('every piece is placed once, in order, within its page and below the one before', () => {
  fc.assert(
    fc.property(pieces, (list) => {
      const placed = paginate(list, PAGE);
      expect(placed.map((one) => one.piece)).toEqual(list);
      placed.forEach(({ piece: one, page, y }, index) => {
        expect(y + one.height).toBeLessThanOrEqual(PAGE);
        const before = placed[index - 1];
        if (before?.page === page) expect(y).toBe(before.y + before.piece.height + one.gap);
        else expect(page).toBe(before ? before.page + 1 : 0);
      });
    }),
  );
});

test('what repeats is drawn exactly above the first piece of a page', () => {
  fc.assert(
    fc.property(pieces, (list) => {
      const placed = paginate(list, PAGE);
      placed.forEach(({ page, repeats }, index) => {
        const first = placed[index - 1]?.page !== page;
        expect(repeats).toBe(first ? 'yes' : 'no');
      });
    }),
  );
});

test('a chain that fits a page is not split', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 99 }),
      fc.integer({ min: 2, max: 8 }),
      (filler, length) => {
        const chain = Array.from({ length }, (_, n) =>
          sized({ keep: n < length - 1 ? 'next' : 'alone' }),
        );
        const placed = paginate([sized({ height: filler + 1 }), ...chain], PAGE);
        expect(new Set(placed.slice(1).map((one) => one.page)).size).toBe(1);
      },
    ),
  );
});

test('a chain taller than a page breaks where it must', () => {
  const chain = Array.from({ length: 25 }, () => sized({ keep: 'next' }));
  expect(paginate(chain, PAGE).at(-1)!.page).toBe(2);
});

test('a piece that starts a page leaves no empty page at the start', () => {
  const [first, second] = paginate([sized({ starts: 'page' }), sized({ starts: 'page' })], PAGE);
  expect([first!.page, second!.page]).toEqual([0, 1]);
});

test('a piece taller than a page is refused', () => {
  expect(() => paginate([sized({ height: 101 })], PAGE)).toThrow(RangeError);
});
