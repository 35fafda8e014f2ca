/** Contrasts of the page's colors, as its style sheets have them, by WCAG 2.2 (1.4.3 and 1.4.11). */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { contrast } from '../../support/contrast.js';

const folder = 'apps/web/styles/';
const sheets = readdirSync(folder).map((name) => readFileSync(folder + name, 'utf8'));
const css = sheets.join('\n');

function token(name: string): string {
  const color = new RegExp(`--${name}: (#[0-9a-f]{6});`).exec(css)?.[1];
  if (color === undefined) throw new Error(`there is no color --${name}`);
  return color;
}

/** The fill that a rule of the figures has. */
function fillOf(selector: string): string {
  const rule = new RegExp(`\\n${selector.replace(/\./g, '\\.')} \\{\\n  fill: ([^;]+);`).exec(css);
  const fill = rule?.[1] ?? '';
  return fill.startsWith('var(') ? token(fill.slice(6, -1)) : fill;
}

describe('text', () => {
  test.each(['ink', 'quiet', 'accent'])('%s reads on paper and on tint at 4.5 to 1', (name) => {
    expect(contrast(token(name), token('paper'))).toBeGreaterThanOrEqual(4.5);
    expect(contrast(token(name), token('tint'))).toBeGreaterThanOrEqual(4.5);
  });

  test('a button of the accent color reads', () => {
    expect(contrast(token('paper'), token('accent'))).toBeGreaterThanOrEqual(4.5);
  });
});

describe('what is no text', () => {
  test('edges of fields, lines of figures and the mark of the focus stand out at 3 to 1', () => {
    expect(css).toMatch(/outline: 3px solid var\(--accent\)/);
    expect(css).toMatch(/border: 1px solid var\(--ink\)/);
    expect(contrast(token('accent'), token('paper'))).toBeGreaterThanOrEqual(3);
    expect(contrast(token('ink'), token('paper'))).toBeGreaterThanOrEqual(3);
  });

  test('light and dark layers of a bar can be told apart in gray, and each has an edge of ink', () => {
    const layers = ['.layer-dark', '.layer-light'];
    expect(contrast(...(layers.map(fillOf) as [string, string]))).toBeGreaterThanOrEqual(3);
    for (const layer of layers) {
      expect(css).toContain(`${layer} {\n  fill: `);
      expect(css.slice(css.indexOf(`\n${layer} {`)).split('}')[0]).toContain('stroke: var(--ink)');
    }
  });

  test('the steps of a band grow darker one by one, and the last stands out from the first', () => {
    const steps = [1, 2, 3, 4, 5].map((step) => fillOf(`.band-fill.step-${step}`));
    const onPaper = steps.map((step) => contrast(step, token('paper')));
    expect([...onPaper].sort((a, b) => a - b)).toEqual(onPaper);
    expect(contrast(steps[0]!, steps[4]!)).toBeGreaterThanOrEqual(4.5);
  });
});

test('no rule names a color for text that is not one of the tokens', () => {
  const colors = [...css.matchAll(/\n\s+color: ([^;]+);/g)].map(([, color]) => color);
  expect(colors.length).toBeGreaterThan(10);
  expect(colors.filter((color) => !/^var\(--(ink|quiet|accent|paper)\)$/.test(color!))).toEqual([]);
});
