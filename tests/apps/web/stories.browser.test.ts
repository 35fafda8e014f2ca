/** Three people and what each takes from the page to a meeting, on the real api, down to the PDF. */
import { readFile } from 'node:fs/promises';
import { chromium, type Browser, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test, vi } from 'vitest';
import { chromiumLaunchOptions } from '../../support/chromium.js';
import type { RealDesk } from '../../support/page/real-desk.js';
import { startSmallDesk } from '../../support/page/small-desk.js';

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

let desk: RealDesk;
let browser: Browser;
let page: Page;
beforeAll(async () => {
  desk = await startSmallDesk();
  browser = await chromium.launch(chromiumLaunchOptions());
});
afterEach(() => page.close());
afterAll(async () => {
  await browser.close();
  await desk.stop();
});

async function open(path: string): Promise<void> {
  page = await browser.newPage({ reducedMotion: 'reduce' });
  await page.goto(desk.url + path);
}

/** Clicks a link that downloads, and gives the first bytes of what came. */
async function download(name: string): Promise<string> {
  const waiting = page.waitForEvent('download');
  await page.getByRole('link', { name }).first().click();
  const path = await (await waiting).path();
  return (await readFile(path)).subarray(0, 5).toString();
}

test('the program manager: what next year, why, the decision on record, the brief', async () => {
  await open('/');
  await page.getByRole('heading', { level: 1, name: 'Next year: FY28' }).waitFor();
  expect(await page.locator('main').innerText()).toContain('S-1 Library Steps');
  await page.getByRole('link', { name: 'The reasons, and the decision' }).click();
  await page.getByRole('heading', { name: 'Reasons for' }).waitFor();
  await page.getByLabel('Decided by').fill('Landscape committee');
  await page.getByLabel('Reason').fill('It opens the water line to Mill Bank.');
  await page.reload();
  expect(await page.getByLabel('Decided by').inputValue()).toBe('Landscape committee');
  await page.getByRole('button', { name: 'Record the decision' }).click();
  await page.getByText('Recorded.', { exact: true }).waitFor();
  const table = page.getByRole('table', { name: 'Decisions on plans of this campus' });
  await expect.poll(() => table.innerText()).toContain('It opens the water line to Mill Bank.');
  expect(await desk.store.decisions.listOf(desk.campusId)).toMatchObject([
    { site: 'S-1', verdict: 'approved', decidedBy: 'Landscape committee', planId: desk.planId },
  ]);
  await page.getByRole('link', { name: 'Home' }).click();
  expect(await download('Administration brief (PDF)')).toBe('%PDF-');
});

test('the superintendent: moves a site, sees what gives, undoes it, takes the staffing request', async () => {
  await open('/?view=plan');
  await page.getByRole('button', { name: 'Move or bar S-2' }).click();
  await page.getByRole('combobox', { name: 'Year', exact: true }).selectOption('FY32');
  await page.getByLabel('Why').fill('The mill road is closed until then.');
  await page.getByRole('button', { name: 'See what gives' }).click();
  await page.getByText('Solved with the change.').waitFor();
  const gives = page.getByRole('table', { name: 'What gives' });
  expect(await gives.innerText()).toContain('S-2 Mill Bank');
  expect(await gives.innerText()).toMatch(/FY30, .*FY32, /s);
  const [newest] = await desk.store.requests.listOf(desk.campusId);
  expect((await desk.store.requests.listOf(desk.campusId)).at(-1)).toMatchObject({
    startFromPlan: desk.planId,
    campusVersion: 2,
  });
  expect(newest?.startFromPlan).toBeNull();
  await page.getByRole('button', { name: 'Keep it: show the new plan' }).click();
  const plan = page.getByRole('table', { name: 'All years of the plan' });
  await expect.poll(() => plan.innerText()).toMatch(/FY32\s+S-2/);

  await page.getByRole('heading', { name: 'Try a change' }).click();
  await page.keyboard.press('Control+z');
  await page.getByText('Undone.').waitFor();
  await expect.poll(() => plan.innerText()).toMatch(/FY30\s+S-2/);
  expect((await desk.store.campuses.load(desk.campusId))?.document['handPlacements']).toEqual(
    (await desk.store.campuses.load(desk.campusId, 1))?.document['handPlacements'],
  );
  await page.getByRole('link', { name: 'For the meeting' }).click();
  expect(await download('Grounds staffing request (PDF)')).toBe('%PDF-');
});

test('for administration and donors: the story by keys alone, then the brief', async () => {
  await open('/?view=meeting');
  const stage = page.getByRole('region', { name: 'The story' });
  await stage.getByRole('heading', { name: 'S-1 Library Steps' }).waitFor();
  await page.keyboard.press('ArrowRight');
  await stage.getByText('2 of 7').waitFor();
  await stage.getByRole('img', { name: /^Sites of each year/ }).waitFor();
  await page.keyboard.press('End');
  await stage.getByRole('heading', { name: 'How sure this is' }).waitFor();
  await page.keyboard.press('Home');
  await stage.getByText('1 of 7').waitFor();
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('.all-slides .slide').count()).toBe(7);
  expect(await page.locator('.all-slides').isVisible()).toBe(true);
  await page.emulateMedia({ media: 'screen' });
  expect(await download('Administration brief (PDF)')).toBe('%PDF-');
});
