import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { heldPlan, planId } from '../../support/page/holdings.js';
import { PageBench, type OpenPage } from '../../support/page/open-page.js';
import { overviewFixture, usualWish } from '../../support/page/overview-fixture.js';

const bench = new PageBench();
beforeAll(() => bench.startBrowser());
afterEach(() => bench.closePages());
afterAll(() => bench.stopBrowser());

/** Name and outline of what has the focus. */
const focused = `(() => {
  const at = document.activeElement;
  const { outlineStyle, outlineWidth } = getComputedStyle(at);
  const name = at.getAttribute('aria-label') ?? at.closest('label')?.textContent ?? at.textContent;
  return { name, isSeen: outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2 };
})()`;

async function tabTo(page: OpenPage['page'], name: string): Promise<void> {
  for (let presses = 0; presses < 80; presses += 1) {
    await page.keyboard.press('Tab');
    const at = await page.evaluate<{ name: string; isSeen: boolean }>(focused);
    expect(at, `focus on "${at.name}" must be seen`).toMatchObject({ isSeen: true });
    if (at.name.startsWith(name)) return;
  }
  throw new Error(`Tab never reached "${name}"`);
}

test('keys alone reach the plan, change the season, unfold a table, solve and stop', async () => {
  const { page, api } = await bench.open();
  await page.getByRole('heading', { level: 1, name: 'Landscape plan' }).waitFor();
  await page.keyboard.press('Tab');
  expect(await page.evaluate(focused)).toMatchObject({ name: 'Skip to the content', isSeen: true });
  await page.keyboard.press('Enter');
  expect(await page.evaluate('document.activeElement.id')).toBe('main');

  await tabTo(page, 'Summer');
  await page.keyboard.press('ArrowRight');
  await page.getByRole('img', { name: /^Fall: hours of care/ }).waitFor();
  await tabTo(page, 'Hours of fall as a table');
  await page.keyboard.press('Enter');
  await page.getByRole('table', { name: 'Fall: effective hours' }).waitFor();

  await tabTo(page, 'Time allowed');
  await tabTo(page, 'Solve');
  await page.keyboard.press('Enter');
  await expect.poll(() => api.listenerCount).toBe(1);
  await tabTo(page, 'Stop and keep the best so far');
  api.holdings.plans.unshift(heldPlan(2, overviewFixture({ ...usualWish, years: 20 })));
  api.holdings.onCancel = () =>
    api.changeSolve({ state: 'cancelled', ending: 'cancelled', planId: planId(2) });
  await page.keyboard.press('Enter');
  await page.getByText('Stopped. The best plan so far is kept.').waitFor();
  await tabTo(page, 'Show the new plan');
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 1, name: 'Landscape plan, FY28 to FY47' }).waitFor();
  expect(await page.evaluate('document.activeElement.id')).toBe('main');
});

test('a figure wider than a phone can be scrolled by keys', async () => {
  const { page } = await bench.open(undefined, { width: 360, height: 740 });
  const box = page.getByRole('region', { name: /^Sites of each year/ });
  await box.focus();
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => box.evaluate((element) => element.scrollLeft)).toBeGreaterThan(0);
});
