import fc from 'fast-check';
import { expect, test } from 'vitest';
import { hatchDots, hatchLines } from '#report-pdf/drawing/hatch-lines.js';

const box = fc.record({
  x: fc.integer({ min: 0, max: 500 }),
  y: fc.integer({ min: 0, max: 700 }),
  width: fc.integer({ min: 1, max: 200 }),
  height: fc.integer({ min: 1, max: 200 }),
});
const slope = fc.constantFrom('rising' as const, 'falling' as const);

test('every point of the box lies within one spacing of a hatch line, at 45 degrees', () => {
  fc.assert(
    fc.property(box, slope, fc.double({ min: 0, max: 1, noNaN: true }), (area, lean, part) => {
      const lines = hatchLines(area, 4, lean);
      for (const [from, to] of lines) {
        expect(Math.abs(to.x - from.x)).toBeCloseTo(area.height, 6);
        expect(Math.sign(to.x - from.x)).toBe(lean === 'rising' ? -1 : 1);
      }
      const y = area.y + part * area.height;
      const crossings = lines.map(([from, to]) => from.x + part * (to.x - from.x));
      if (area.width < 4) return;
      const x = area.x + area.width / 2;
      expect(
        Math.min(...crossings.map((at) => Math.abs(at - x))),
        `at ${x},${y}`,
      ).toBeLessThanOrEqual(4);
    }),
  );
});

test('areas side by side share one pattern', () => {
  const whole = hatchLines({ x: 0, y: 0, width: 100, height: 20 }, 4, 'rising');
  const right = hatchLines({ x: 50, y: 0, width: 50, height: 20 }, 4, 'rising');
  for (const part of right) expect(whole).toContainEqual(part);
});

test('dots stand on one grid and inside the box', () => {
  fc.assert(
    fc.property(box, (area) => {
      const dots = hatchDots(area, 4);
      const [right, bottom] = [area.x + area.width, area.y + area.height];
      const inside = dots.filter(
        ({ x, y }) => x >= area.x && x <= right && y >= area.y && y <= bottom,
      );
      expect(inside).toHaveLength(dots.length);
      expect(dots.filter(({ x, y }) => x % 4 !== 0 || y % 4 !== 0)).toEqual([]);
      expect(dots.length).toBeGreaterThanOrEqual(
        Math.floor(area.width / 4) * Math.floor(area.height / 4),
      );
    }),
  );
});
