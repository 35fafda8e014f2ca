import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { axeFindings } from '../../support/page/axe.js';
import type { FakeApi } from '../../support/page/fake-api.js';
import { heldPlan, heldSolve, planId } from '../../support/page/holdings.js';
import { PageBench, phone } from '../../support/page/open-page.js';
import { overviewFixture, usualWish } from '../../support/page/overview-fixture.js';

const bench = new PageBench();
beforeAll(() => bench.startBrowser());
afterEach(() => bench.closePages());
afterAll(() => bench.stopBrowser());

const withoutPlan = (api: FakeApi): void => {
  api.holdings.plans = [];
};

const progress = {
  elapsedSeconds: 12.4,
  tier: 'benefit',
  bestObjective: 2868.4,
  bound: 2961.2,
  gap: 0.0323,
  message: 'Looking at FY33 to FY39.',
};

/** Every state of the page: how it comes about, what it is called, and what it tells one to do. */
const states: Readonly<Record<string, State>> = {
  'a plan': {
    prepare: () => undefined,
    heading: 'Landscape plan, FY28 to FY62',
    says: 'In FY28, prepare TVU-19 East Hall Court',
  },
  'a plan of fifty years with long names': {
    prepare: (api) => {
      const wish = { years: 50, sitesIn: (at: number) => (at % 7 === 3 ? 3 : 1) };
      api.holdings.plans = [heldPlan(1, overviewFixture({ ...wish, names: 'long' }))];
    },
    heading: 'Landscape plan, FY28 to FY77',
    says: 'Terrace north of the former Chemical Engineering Library',
  },
  'a plan of one year and one site': {
    prepare: (api) => {
      const wish = { ...usualWish, years: 1, sitesIn: () => 1 };
      api.holdings.plans = [heldPlan(1, overviewFixture(wish))];
    },
    heading: 'Landscape plan, FY28 to FY28',
    says: '1 of 32 candidate sites built',
  },
  'a plan without a site': {
    prepare: (api) => {
      const wish = { ...usualWish, years: 12, sitesIn: () => 0 };
      api.holdings.plans = [heldPlan(1, overviewFixture(wish))];
    },
    path: '/?view=next',
    heading: 'Next year: FY28',
    says: 'Use the year to clear what is listed under “To find out”',
  },
  'no plan yet': { prepare: withoutPlan, heading: 'No plan yet', says: 'Solve to make the first' },
  'a plan that no longer reads': {
    prepare: (api) => {
      const body = { title: 'The stored plan no longer reads', status: 409, detail: '' };
      api.holdings.refusals.set(`/api/plans/${planId(1)}/overview`, { status: 409, body });
    },
    heading: 'The plan no longer reads',
    says: 'Tamarack Vale University itself is kept: solve to make a new plan.',
  },
  'solving the first plan': {
    prepare: (api) => {
      withoutPlan(api);
      api.holdings.solves = [heldSolve(1, { state: 'solving', progress })];
    },
    heading: 'The first plan is being made',
    says: '3.2%',
  },
  'no plan can exist': {
    prepare: (api) => {
      withoutPlan(api);
      const conflict = [
        { kind: 'commitment' as const, id: 'one-a-year', name: 'One site each year through FY41' },
        { kind: 'limit' as const, id: 'positions', name: 'No new position before FY41' },
      ];
      api.holdings.solves = [heldSolve(1, { state: 'done', ending: 'no-plan', conflict })];
    },
    heading: 'No plan can exist',
    says: 'One site each year through FY41',
  },
  'a failed solve': {
    prepare: (api) => {
      withoutPlan(api);
      const problem = {
        ...{ code: 'solver-lost', record: 'solve', field: '', value: null },
        ...{ problem: 'The solver stopped three times.', remedy: 'Allow less time.' },
        severity: 'error' as const,
      };
      api.holdings.solves = [heldSolve(1, { state: 'failed', problem })];
    },
    heading: 'No plan yet',
    says: 'Allow less time.',
  },
  'no campus': {
    prepare: (api) => {
      api.holdings.campuses = [];
    },
    heading: 'No campus is loaded',
    says: 'Load a campus file',
  },
  'a refusal': {
    prepare: (api) => {
      const body = { title: 'The store cannot be reached', status: 503, detail: 'It restarts.' };
      api.holdings.refusals.set('/api/campuses', { status: 503, body });
    },
    heading: 'The plan could not be loaded',
    says: 'Try again. If it fails again',
  },
  loading: {
    prepare: (api) => {
      api.holdings.silent.add('/api/campuses');
    },
    heading: 'Loading the plan.',
    says: 'Loading',
  },
};

interface State {
  readonly path?: string;
  readonly prepare: (api: FakeApi) => void;
  readonly heading: string;
  readonly says: string;
}

test.each(Object.entries(states))(
  '%s: says what is the matter, passes axe-core, and fits a phone',
  async (_name, { path, prepare, heading, says }) => {
    const { page, errors } = await bench.open(prepare, undefined, path);
    await page.getByRole('heading', { level: 1, name: heading }).waitFor();
    expect(await page.locator('body').innerText()).toContain(says);
    await unfold(page);
    expect(await axeFindings(page)).toEqual([]);
    await page.setViewportSize(phone);
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(phone.width);
    expect(await axeFindings(page, { without: ['color-contrast'] })).toEqual([]);
    expect(errors).toEqual([]);
  },
);

type Page = Awaited<ReturnType<typeof bench.open>>['page'];

async function unfold(page: Page): Promise<void> {
  await page.evaluate("document.querySelectorAll('details').forEach((part) => (part.open = true))");
}

test('a server that is gone is said, and the page comes back when it does', async () => {
  const { page, api } = await bench.open();
  await page.getByRole('heading', { level: 1, name: 'Landscape plan' }).waitFor();
  await page.route('**/api/**', (route) => route.abort());
  await page.evaluate("window.dispatchEvent(new PopStateEvent('popstate'))");
  await page.getByRole('heading', { level: 1, name: 'The server does not answer' }).waitFor();
  expect(await axeFindings(page)).toEqual([]);
  await page.unroute('**/api/**');
  api.holdings.plans = [];
  await page.getByRole('button', { name: 'Try again' }).click();
  await page.getByRole('heading', { level: 1, name: 'No plan yet' }).waitFor();
});

test('an address that names a plan not held leads to the newest one', async () => {
  const { page } = await bench.open();
  await page.goto(`${page.url()}&plan=gone`);
  await page.getByRole('heading', { level: 1, name: 'This plan is not here' }).waitFor();
  expect(await axeFindings(page)).toEqual([]);
  await page.getByRole('button', { name: 'Show the newest plan' }).click();
  await page.getByRole('heading', { level: 1, name: 'Landscape plan' }).waitFor();
});

test('a tab left open across a new build says that the page must be reloaded', async () => {
  const { page } = await bench.open(undefined, undefined, '/');
  await page.getByRole('navigation', { name: 'Views' }).waitFor();
  await page.route('**/assets/*.js', (route) => route.fulfill({ status: 404, body: '' }));
  await page.getByRole('link', { name: 'Set-up', exact: true }).click();
  await page.getByRole('heading', { level: 1, name: 'could not be loaded' }).waitFor();
  expect(await axeFindings(page)).toEqual([]);
  await page.unroute('**/assets/*.js');
  await page.getByRole('button', { name: 'Reload the page' }).click();
  await page.getByRole('heading', { level: 1, name: 'Set-up' }).waitFor();
});
