/** A campus of many sites: what a key or a click draws anew must not grow with the campus. */
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { generatedFile } from '../../bench/programs/generated-program.js';
import { heldPlan } from '../../support/page/holdings.js';
import { PageBench, type OpenPage } from '../../support/page/open-page.js';
import { overviewFixture } from '../../support/page/overview-fixture.js';

const bench = new PageBench();
beforeAll(() => bench.startBrowser());
afterEach(() => bench.closePages());
afterAll(() => bench.stopBrowser());

async function openSites(sites: number): Promise<OpenPage> {
  const open = await bench.open(
    (api) => {
      api.holdings.file = generatedFile({ sites, years: 50, kind: 'tight', seed: 1 });
      api.holdings.plans = [
        heldPlan(1, overviewFixture({ years: 50, sitesIn: () => 4, names: 'usual' })),
      ];
    },
    undefined,
    '/?view=sites',
  );
  await open.page.getByText(`${sites} sites of ${sites}`).waitFor();
  return open;
}

/** Elements of the list, of the map and of the names on it that an act puts in, takes out or moves. */
async function drawnAnew(page: Page, act: () => Promise<unknown>): Promise<Drawn> {
  await page.evaluate(`
    window.drawn = { list: 0, map: 0, names: 0 };
    const places = { list: '.site-list', map: '.map', names: '.map-labels' };
    window.watchers = Object.entries(places).map(([name, place]) => {
      const watcher = new MutationObserver((changes) => {
        for (const { addedNodes, removedNodes } of changes) {
          for (const node of [...addedNodes, ...removedNodes]) {
            window.drawn[name] += 1 + (node.querySelectorAll?.('*').length ?? 0);
          }
        }
      });
      watcher.observe(document.querySelector(place), { childList: true, subtree: true });
      return watcher;
    })`);
  await act();
  return page.evaluate<Drawn>(`new Promise((tell) => {
    requestAnimationFrame(() => setTimeout(() => {
      for (const watcher of window.watchers) watcher.disconnect();
      tell(window.drawn);
    }, 100));
  })`);
}

interface Drawn {
  readonly list: number;
  readonly map: number;
  readonly names: number;
}

const acts: Readonly<Record<string, (page: Page) => Promise<unknown>>> = {
  'a key in the filter': (page) => page.getByLabel('Find').press('1'),
  'the key taken back': (page) => page.getByLabel('Find').press('Backspace'),
  'a new order': (page) => page.getByRole('button', { name: /^Area/ }).click(),
  'a nearer map': (page) => page.getByRole('button', { name: 'Closer' }).click(),
};

test('with 500 sites, a key, a new order and a nearer map draw anew no more than the rows in sight', async () => {
  const { page, errors } = await openSites(500);
  const inSight = await page.locator('.site-list *').count();
  for (const [name, act] of Object.entries(acts)) {
    const drawn = await drawnAnew(page, () => act(page));
    // All that is there goes, and as much comes.
    expect(drawn.list, name).toBeLessThanOrEqual(2 * inSight);
    // Nearer, more names find room; nothing else of the map changes.
    expect(drawn.map - drawn.names, name).toBe(0);
  }
  expect(inSight).toBeLessThan(2_000);
  expect(await page.locator('.map-box .map-site').count()).toBe(500);
  expect(errors).toEqual([]);
});

test('with 500 sites, the list holds all of them: by scrolling, by its last button, and found by name', async () => {
  const { page } = await openSites(500);
  const rows = page.locator('.site-list tbody th');
  const first = await rows.count();
  expect(first).toBeLessThan(200);
  await page.locator('.site-list .table-box').evaluate((box) => box.scrollTo(0, box.scrollHeight));
  await expect.poll(() => rows.count()).toBeGreaterThan(first);
  await page.getByRole('button', { name: /^Show \d+ more sites$/ }).press('Enter');
  expect(await rows.count()).toBe(500);
  await page.getByLabel('Find').fill('S500');
  await page.getByText('1 site of 500').waitFor();
  expect(await rows.allTextContents()).toEqual([expect.stringContaining('S500 Site 500')]);
});
