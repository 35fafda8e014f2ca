import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bandStep, shareText } from '#report/figures/band-fills.js';
import { roundLength } from '#report/figures/map-furniture.js';
import { axisTicks, linearScale } from '#report/figures/scale.js';
import { spread } from '#report/figures/spread.js';
import { valueText } from '#report/figures/values.js';
import { wrapLabel } from '#report/figures/wrap-label.js';

test('axis values are even, round and reach the greatest value', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.001, max: 1e9, noNaN: true }), (greatest) => {
      const ticks = axisTicks(greatest, 5);
      const step = ticks[1]! - ticks[0]!;
      expect(ticks[0]).toBe(0);
      expect(ticks.at(-1)!).toBeGreaterThanOrEqual(greatest * (1 - 1e-6));
      expect(ticks.at(-2)!).toBeLessThan(greatest);
      expect(ticks.length).toBeLessThanOrEqual(7);
      const mantissa = step / 10 ** Math.floor(Math.log10(step) + 1e-9);
      expect([1, 2, 5].some((round) => Math.abs(mantissa - round) < 1e-6)).toBe(true);
    }),
  );
});

test('nothing to show still has an axis', () => {
  expect(axisTicks(0, 5)).toEqual([0, 1]);
});

test('a scale maps the ends of its domain to the ends of its range', () => {
  const scale = linearScale([0, 50], [200, 20]);
  expect([scale(0), scale(25), scale(50)]).toEqual([200, 110, 20]);
});

test('labels are spread apart in order, inside their range', () => {
  const wishes = fc.array(fc.integer({ min: 0, max: 200 }), { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(wishes, (list) => {
      const placed = spread(list, 11, [0, 200]);
      const order = list.map((_, n) => n).sort((a, b) => list[a]! - list[b]!);
      const gap = Math.min(11, 200 / Math.max(1, list.length - 1));
      order.forEach((n, rank) => {
        expect(placed[n]).toBeGreaterThanOrEqual(-1e-9);
        expect(placed[n]).toBeLessThanOrEqual(200 + 1e-9);
        if (rank > 0)
          expect(placed[n]! - placed[order[rank - 1]!]!).toBeGreaterThanOrEqual(gap - 1e-9);
      });
    }),
  );
});

test('labels with room stay where they wish', () => {
  expect(spread([20, 60, 100], 11, [0, 200])).toEqual([20, 60, 100]);
});

test('a scale bar has the greatest round length that fits', () => {
  expect([roundLength(999), roundLength(500), roundLength(4.9), roundLength(0.3)]).toEqual([
    500, 500, 2, 0.2,
  ]);
});

test('an overrun is never printed as 100 %, and unknown is never a number', () => {
  expect([1, 1.0001, 1.26, null].map(shareText)).toEqual(['100', '101', '126', 'unknown']);
  expect(valueText(null)).toBe('unknown');
  expect(valueText(0)).toBe('0');
  expect(valueText(12345.6)).toBe('12,346');
});

test('a share at a step belongs to the step below', () => {
  expect([0.5, 0.75, 0.9, 1, 1.01, null].map((share) => bandStep(share).fill)).toEqual([
    'none',
    'light',
    'medium',
    'dark',
    'cross',
    'dots',
  ]);
});

test('a wrapped label keeps its letters and its lines stay short', () => {
  const words = fc.array(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 30 }), {
    minLength: 1,
  });
  fc.assert(
    fc.property(words, (list) => {
      const text = list.join(' ');
      const lines = wrapLabel(text, 10, 60);
      expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
      for (const line of lines) expect([...line].length).toBeLessThanOrEqual(10);
    }),
  );
});
