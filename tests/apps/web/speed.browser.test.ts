/** A campus of 500 sites and a plan of 50 years: what the page costs the reader's processor. */
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import type { CDPSession, Page } from 'playwright-core';
import { heldPlan } from '../../support/page/holdings.js';
import { PageBench } from '../../support/page/open-page.js';
import { overviewFixture } from '../../support/page/overview-fixture.js';
import { smallFile } from '../../support/small-campus.js';

const bench = new PageBench();
beforeAll(() => bench.startBrowser());
afterEach(() => bench.closePages());
afterAll(() => bench.stopBrowser());

type Ring = [number, number][];
interface Site {
  readonly id: string;
  readonly name: string;
  readonly boundary: { readonly type: string; readonly coordinates: Ring[] };
}

/** Copies of the small campus's sites on a grid of 25 by 20. */
function manySites(): Site[] {
  const [pattern] = smallFile().candidateSites as unknown as Site[];
  return Array.from({ length: 500 }, (_, index) => {
    const [east, north] = [(index % 25) * 0.0008, Math.floor(index / 25) * 0.0006];
    const ring = pattern!.boundary.coordinates[0]!.map(
      ([longitude, latitude]): [number, number] => [longitude + east, latitude + north],
    );
    const boundary = { ...pattern!.boundary, coordinates: [ring] };
    return { ...pattern!, id: `S-${index + 1}`, name: `Place ${index + 1}`, boundary };
  });
}

/**
 * Milliseconds of the page's main thread, by its own clock: other work of the machine does not count,
 * and the limits are those that a reader would feel on an idle one.
 */
async function threadTime(page: Page, act: () => Promise<unknown>): Promise<number> {
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  const before = await busy(session);
  await act();
  await page.evaluate('new Promise((r) => requestAnimationFrame(() => setTimeout(r, 50)))');
  const after = await busy(session);
  await session.detach();
  return after - before;
}

async function busy(session: CDPSession): Promise<number> {
  const { metrics } = await session.send('Performance.getMetrics');
  return 1000 * (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN);
}

const fiftyYears = { years: 50, sitesIn: () => 4, names: 'usual' } as const;

test('five hundred sites: the list answers a key, a click and a new order within 100 ms', async () => {
  const { page } = await bench.open(
    (api) => {
      api.holdings.file = { ...smallFile(), candidateSites: manySites() };
      api.holdings.plans = [heldPlan(1, overviewFixture(fiftyYears))];
    },
    undefined,
    '/?view=sites',
  );
  await page.getByText('501 sites of 501').waitFor();
  const acts: Readonly<Record<string, () => Promise<unknown>>> = {
    'a key in the filter': () => page.getByLabel('Find').press('9'),
    'a new order': () => page.getByRole('button', { name: /^Area/ }).click(),
    'a nearer map': () => page.getByRole('button', { name: 'Closer' }).click(),
  };
  const times: Record<string, number> = {};
  for (const [name, act] of Object.entries(acts)) times[name] = await threadTime(page, act);
  for (const [name, time] of Object.entries(times)) expect(time, name).toBeLessThan(100);
});

test('fifty years: the first view is there for less than 1.5 s of work', async () => {
  const { page, api } = await bench.open((api) => {
    api.holdings.plans = [heldPlan(1, overviewFixture(fiftyYears))];
  });
  const url = page.url();
  await page.goto('about:blank');
  const time = await threadTime(page, async () => {
    await page.goto(url);
    await page.getByRole('heading', { level: 1, name: 'Landscape plan' }).waitFor();
  });
  expect(time).toBeLessThan(1_500);
  expect(api.holdings.plans).toHaveLength(1);
});
