import { expect, test } from 'vitest';
import { COLORS } from '#report-pdf/page/colors.js';

/** Contrast of two colors by the formula of WCAG 2.2, "relative luminance". */
function contrast(a: string, b: string): number {
  const [high, low] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (high! + 0.05) / (low! + 0.05);
}

function luminance(color: string): number {
  const [red, green, blue] = [1, 3, 5]
    .map((at) => parseInt(color.slice(at, at + 2), 16) / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}

test('the formula gives 21 for black on white', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
});

test.each(['ink', 'gray', 'accent'] as const)(
  '%s reads on paper and on tint at 4.5 to 1 or better',
  (name) => {
    expect(contrast(COLORS[name], COLORS.paper)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(COLORS[name], COLORS.tint)).toBeGreaterThanOrEqual(4.5);
  },
);

test('the contrasts are those that the color table states', () => {
  const stated = (['ink', 'gray', 'accent'] as const).map((name) =>
    contrast(COLORS[name], COLORS.paper).toFixed(1),
  );
  expect(stated).toEqual(['16.9', '7.2', '8.4']);
});
