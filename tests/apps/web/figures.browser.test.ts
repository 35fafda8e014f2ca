import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { PageBench, type OpenPage } from '../../support/page/open-page.js';
import { overviewFixture } from '../../support/page/overview-fixture.js';

const bench = new PageBench();
beforeAll(() => bench.startBrowser());
afterEach(() => bench.closePages());
afterAll(() => bench.stopBrowser());

const overview = overviewFixture();
const whole = (hours: number): string => Math.round(hours).toLocaleString('en-US');

async function openPlan(): Promise<OpenPage> {
  const open = await bench.open();
  await open.page.getByRole('heading', { level: 1, name: 'Landscape plan' }).waitFor();
  return open;
}

/** Cells of the table with a caption, row by row. */
async function cellsOf(page: OpenPage['page'], caption: string): Promise<string[][]> {
  const table = page.getByRole('table', { name: caption });
  return table
    .locator('tbody tr')
    .evaluateAll((rows) =>
      rows.map((row) => [...row.children].map((cell) => cell.textContent ?? '')),
    );
}

test('the table under the care figure holds the numbers of the plan', async () => {
  const { page } = await openPlan();
  await page.getByText('Hours of summer as a table').click();
  const summers = overview.seasons.filter(({ season }) => season === 'summer');
  expect(await cellsOf(page, 'Summer: effective hours')).toEqual(
    summers.map((row) => [
      row.afterHorizon ? `${row.label} (after the plan)` : row.label,
      whole(row.careByAge.year1),
      whole(row.careByAge.year2),
      whole(row.careByAge.year3),
      whole(row.careByAge.mature),
      whole(row.buildHours + row.superviseHours),
      whole(row.supplyNow),
      whole(row.supplyProposed),
      whole(row.shortNow),
      whole(row.unserved),
    ]),
  );
});

test('a year adds up its four seasons, and says that this hides the summer', async () => {
  const { page } = await openPlan();
  await page.locator('#care').getByRole('radio', { name: 'Year' }).check();
  await page.getByText('Hours of the whole year as a table').click();
  const rows = await cellsOf(page, 'Whole year: effective hours');
  const firstYear = overview.seasons.filter(({ year }) => year === 'FY28');
  expect(rows[0]?.[0]).toBe('FY28');
  expect(rows[0]?.[6]).toBe(whole(firstYear.reduce((sum, row) => sum + row.supplyNow, 0)));
  expect(rows).toHaveLength(40);
  const caption = await page.locator('#care .care-caption').innerText();
  expect(caption).toContain('Annual totals hide the summer.');
});

test('bars are as high as their hours on the scale of the figure', async () => {
  const { page } = await openPlan();
  const heights = await page
    .getByRole('img', { name: /^Summer: hours of care/ })
    .locator('rect.layer-light')
    .evaluateAll((bars) => bars.map((bar) => Number(bar.getAttribute('height'))));
  const summers = overview.seasons.filter(({ season }) => season === 'summer');
  const hours = summers.map(({ careByAge }) => careByAge.mature);
  const perHour = heights.map((height, index) => height / (hours[index] ?? Number.NaN));
  expect(heights).toHaveLength(hours.length);
  for (const scale of perHour) expect(scale).toBeCloseTo(perHour[0] ?? 0, 6);
});

test('the figure of a fund and the one of compost hold the numbers of their tables', async () => {
  const { page } = await openPlan();
  await page.getByText('Fund: Capital allotment').click();
  await page.getByText('Capital allotment as a table').click();
  const [first] = await cellsOf(page, 'Capital allotment, in dollars of the year');
  expect(first).toEqual(['FY28', '$0', '$75,000', '$61,000', '$0', '$14,000', '$10,000']);
  const fund = page.getByRole('img', { name: /^Capital allotment: what comes in/ });
  expect(await fund.locator('.step-dashed').count()).toBe(1);
  expect(await fund.locator('rect.layer-hatched').count()).toBe(overview.years.length);

  await page.locator('#compost').getByRole('radio', { name: 'Fall' }).check();
  await page.getByText('Compost of fall as a table').click();
  const rows = await cellsOf(page, 'Fall: compost in cubic yards');
  const falls = overview.compost.filter(({ season }) => season === 'fall');
  expect(rows.map(([label, made, bought]) => [label, made, bought])).toEqual(
    falls.map((row) => [row.label, whole(row.made), whole(row.bought)]),
  );
  const hanging = page.getByRole('img', { name: /^Fall: compost used/ }).locator('.layer-light');
  expect(await hanging.count()).toBe(falls.filter(({ bought }) => bought > 0).length);
});

test('the strip has a mark for each site, and hatches those that rest on a position', async () => {
  const { page } = await openPlan();
  const marks = page.getByRole('img', { name: /^Sites of each year/ }).locator('rect.site-mark');
  const sites = overview.years.flatMap((year) => year.sites);
  expect(await marks.count()).toBe(sites.length);
  const fills = await marks.evaluateAll((all) => all.map((mark) => getComputedStyle(mark).fill));
  expect(fills.map((fill) => fill.startsWith('url('))).toEqual(
    sites.map(({ needsProposedPosition }) => needsProposedPosition),
  );
});

test('the strip and the plan table name every year and site', async () => {
  const { page } = await openPlan();
  await page.getByText('All years as a table').click();
  const strip = await cellsOf(page, 'Sites of each year, and the share of each resource');
  expect(strip.map(([year]) => year)).toEqual(overview.years.map(({ year }) => year));
  expect(strip[7]).toEqual(['FY35', 'none', 'missed', ...strip[7]!.slice(3)]);
  const plan = await cellsOf(page, 'All years of the plan');
  const [first] = overview.years[0]!.sites;
  expect(plan[0]).toEqual([
    ...['FY28', `${first!.site} ${first!.name}`, first!.zone, first!.buildType],
    ...[whole(first!.areaSqFt), '$29,000 to $61,000', 'spring 2028', 'Move or bar'],
  ]);
});

test('the brief of the plan on the page can be downloaded', async () => {
  const { page, api } = await bench.open(undefined, undefined, '/?view=meeting');
  const waiting = page.waitForEvent('download');
  await page.locator('#documents').getByRole('link').click();
  const download = await waiting;
  expect(download.suggestedFilename()).toBe('administration-brief.pdf');
  expect(download.url()).toContain(api.holdings.plans[0]!.summary.id);
});
