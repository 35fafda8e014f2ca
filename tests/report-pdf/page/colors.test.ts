import { expect, test } from 'vitest';
import { COLORS } from '#report-pdf/page/colors.js';
import { contrast } from '../../support/contrast.js';

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
