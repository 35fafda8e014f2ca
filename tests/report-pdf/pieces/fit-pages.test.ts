import { expect, test } from 'vitest';
import { fitPages } from '#report-pdf/pieces/fit-pages.js';
import { paginate } from '#report-pdf/pieces/paginate.js';
import { piece } from '#report-pdf/pieces/piece.js';

const PAGE = 100;
const pieces = (count: number, gap: number) =>
  Array.from({ length: count }, () => piece(10, () => undefined, { gap }));
const pages = (placed: ReturnType<typeof paginate>) => placed.at(-1)!.page + 1;

test('a last page with one line is saved by less space above the pieces', () => {
  const six = pieces(7, 6);
  expect(pages(paginate(six, PAGE))).toBe(2);
  const placed = fitPages(six, PAGE);
  expect(pages(placed)).toBe(1);
  placed.slice(1).forEach(({ y }, n) => {
    const above = placed[n]!;
    expect(y - above.y - 10).toBeGreaterThan(3);
    expect(y - above.y - 10).toBeLessThan(6);
  });
});

test('pages that are filled keep their space, and so do those that closing up cannot save', () => {
  for (const kept of [pieces(10, 6), pieces(6, 6), pieces(8, 1), pieces(12, 0)]) {
    expect(fitPages(kept, PAGE)).toEqual(paginate(kept, PAGE));
  }
});
