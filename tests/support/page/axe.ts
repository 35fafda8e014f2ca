import axe, { type AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/**
 * What axe-core finds against WCAG 2.2 AA and its own good practice; empty is what we want.
 * `without` spares a slow rule where an earlier look has settled it, such as colors.
 */
export async function axeFindings(
  page: Page,
  { without = [] }: { readonly without?: readonly string[] } = {},
): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  const options = JSON.stringify({
    runOnly: rules,
    resultTypes: ['violations'],
    rules: Object.fromEntries(without.map((rule) => [rule, { enabled: false }])),
  });
  const results = await page.evaluate<AxeResults>(`axe.run(document, ${options})`);
  if (results.passes.length === 0) throw new Error('axe-core looked at nothing');
  return results.violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`,
  );
}
