/** Every view on the real api: axe-core, a phone's width, and half the width as at 200 % zoom. */
import { chromium, type Browser, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { chromiumLaunchOptions } from '../../support/chromium.js';
import { axeFindings } from '../../support/page/axe.js';
import type { RealDesk } from '../../support/page/real-desk.js';
import { startSmallDesk } from '../../support/page/small-desk.js';

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

let desk: RealDesk;
let browser: Browser;
let page: Page;
const errors: string[] = [];
beforeAll(async () => {
  desk = await startSmallDesk();
  browser = await chromium.launch(chromiumLaunchOptions());
  page = await browser.newPage({ reducedMotion: 'reduce' });
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
});
afterAll(async () => {
  await browser.close();
  await desk.stop();
});

/** Address, what shows that it is there, and the name in the list of views. */
const views: readonly (readonly [string, string, string])[] = [
  ['/', 'What to find out first', 'Home'],
  ['/?view=sites&site=S-1', 'Estimate', 'Sites'],
  ['/?view=plan', 'Try a change', 'Plan'],
  ['/?view=next', 'How the candidates are suited', 'Next year'],
  ['/?view=what-if', 'What each promise costs', 'What if'],
  ['/?view=meeting', 'Documents', 'For the meeting'],
  ['/?view=set-up', 'Bring your own sites, or a campus bundle', 'Set-up'],
];

test.each(views)('%s passes axe-core and fits every width', async (path, heading, name) => {
  await page.setViewportSize({ width: 1280, height: 900 });
  await page.goto(desk.url + path);
  await page.getByRole('heading', { name: heading, exact: true }).first().waitFor();
  await page.waitForLoadState('networkidle');
  const current = page.getByRole('navigation', { name: 'Views' }).locator('[aria-current=page]');
  expect(await current.innerText()).toBe(name);
  expect(await page.title()).toContain(name);
  await page.evaluate("document.querySelectorAll('details').forEach((part) => (part.open = true))");
  expect(await axeFindings(page)).toEqual([]);
  for (const width of [640, 360]) {
    await page.setViewportSize({ width, height: 740 });
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(width);
  }
  expect(await axeFindings(page, { without: ['color-contrast'] })).toEqual([]);
  expect(errors).toEqual([]);
});

test('keys alone go from view to view, open a site from the list, and zoom the map', async () => {
  await page.setViewportSize({ width: 1280, height: 900 });
  await page.goto(desk.url);
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  expect(await focusedText()).toBe('Sites');
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 1, name: 'Sites' }).waitFor();
  expect(await page.evaluate('document.activeElement.id')).toBe('main');
  await tabTo('Map.');
  const map = page.getByRole('img', { name: /^Map of the campus/ });
  const before = await map.getAttribute('viewBox');
  await page.keyboard.press('+');
  expect(await map.getAttribute('viewBox')).not.toBe(before);
  await tabTo('Find');
  await page.keyboard.type('mill');
  await page.getByText('1 site of').waitFor();
  await tabTo('S-2 Mill Bank');
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 2, name: 'S-2 Mill Bank' }).waitFor();
  expect(page.url()).toContain('site=S-2');
  await page.goBack();
  await page.getByText('Open a site from the list or the map').waitFor();
});

const focusedText = () =>
  page.evaluate<string>(`(() => {
    const at = document.activeElement;
    return at.getAttribute('aria-label') ?? at.closest('label')?.textContent ?? at.textContent;
  })()`);

async function tabTo(name: string): Promise<void> {
  for (let presses = 0; presses < 40; presses += 1) {
    await page.keyboard.press('Tab');
    if ((await focusedText()).startsWith(name)) return;
  }
  throw new Error(`Tab never reached "${name}"`);
}
