import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { heldPlan, planId } from '../../support/page/holdings.js';
import { PageBench, type OpenPage } from '../../support/page/open-page.js';
import { overviewFixture, usualWish } from '../../support/page/overview-fixture.js';

const bench = new PageBench();
beforeAll(() => bench.startBrowser());
afterEach(() => bench.closePages());
afterAll(() => bench.stopBrowser());

const better = overviewFixture({ ...usualWish, years: 20 });
const progress = (elapsedSeconds: number, bestObjective: number, gap: number) => ({
  ...{ elapsedSeconds, bestObjective, bound: 2961.2, gap },
  ...{ tier: 'benefit', message: `Round ${elapsedSeconds}.` },
});

async function startSolve({ page, api }: OpenPage): Promise<void> {
  await page.getByLabel('Time allowed').selectOption('5 minutes');
  await page.getByRole('button', { name: 'Solve', exact: true }).click();
  await page.getByText('Waiting for the solver.').waitFor();
  await expect.poll(() => api.listenerCount).toBe(1);
}

test('a solve shows its progress live, and its plan only when asked', async () => {
  const open = await bench.open();
  const { page, api } = open;
  await startSolve(open);
  expect(api.solveBodies).toEqual([{ seconds: 300 }]);

  api.changeSolve({ state: 'solving', progress: progress(3.9, 2701.2, 0.0963) });
  const panel = page.locator('#solve');
  await panel.getByText('9.6%').waitFor();
  await panel.getByText('Now improving: benefit of the sites.').waitFor();
  api.changeSolve({ progress: progress(41, 2868.4, 0.0004) });
  await panel.getByText('under 0.1%').waitFor();
  expect(await panel.innerText()).toContain('41 seconds');

  api.holdings.plans.unshift(heldPlan(2, better));
  api.changeSolve({ state: 'done', ending: 'time-limit', planId: planId(2) });
  await panel.getByText('The new plan is ready.').waitFor();
  expect(await page.getByRole('heading', { level: 1 }).innerText()).toContain('FY62');
  await panel.getByRole('button', { name: 'Show the new plan' }).click();
  await page.getByRole('heading', { level: 1, name: 'Landscape plan, FY28 to FY47' }).waitFor();
  expect(page.url()).toContain(planId(2));
  await page.goBack();
  await page.getByRole('heading', { level: 1, name: 'Landscape plan, FY28 to FY62' }).waitFor();
});

test('a cancelled solve keeps the best plan so far', async () => {
  const open = await bench.open();
  const { page, api } = open;
  await startSolve(open);
  api.changeSolve({ state: 'solving', progress: progress(9, 2701.2, 0.09) });
  api.holdings.onCancel = () => api.changeSolve({ cancelWanted: true });
  await page.getByRole('button', { name: 'Stop and keep the best so far' }).click();
  await page.getByText('Stopping; the best plan so far is kept.').waitFor();
  api.holdings.plans.unshift(heldPlan(2, better));
  api.changeSolve({ state: 'cancelled', ending: 'cancelled', planId: planId(2) });
  await page.getByText('Stopped. The best plan so far is kept.').waitFor();
  await page.getByRole('button', { name: 'Show the new plan' }).click();
  await page.getByRole('heading', { level: 1, name: 'Landscape plan, FY28 to FY47' }).waitFor();
});

test('the first plan of a campus is shown as soon as it is there', async () => {
  const open = await bench.open((api) => {
    api.holdings.plans = [];
  });
  await startSolve(open);
  open.api.holdings.plans = [heldPlan(1, overviewFixture())];
  open.api.changeSolve({ state: 'done', ending: 'proven', planId: planId(1) });
  await open.page.getByRole('heading', { level: 1, name: 'Landscape plan' }).waitFor();
});

test('a solve that ends while the stream is broken is noticed', async () => {
  const open = await bench.open();
  const { page, api } = open;
  await startSolve(open);
  await api.stop();
  await page.getByText('The page has lost touch with the server.').waitFor();
  api.changeSolve({ state: 'done', ending: 'no-plan' });
  await api.start();
  await page.getByText('No plan can keep every binding promise and limit.').waitFor();
});

test('a refused solve says why and what to do', async () => {
  const { page, api } = await bench.open((fake) => {
    fake.holdings.plans = [];
  });
  await page.getByRole('heading', { name: 'No plan yet' }).waitFor();
  const problems = [{ remedy: 'Ask for at most four hours.' }];
  const body = { title: 'The request is not as documented', detail: 'seconds.', problems };
  const path = `/api/campuses/${api.holdings.campuses[0]!.id}/solves`;
  api.holdings.refusals.set(path, { status: 400, body });
  await page.getByRole('button', { name: 'Solve', exact: true }).click();
  await page.getByText('Ask for at most four hours.').waitFor();
});
