/** A campus for which no plan can exist: what stands against what, and what would help, asked of the campus itself. */
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import type { ConflictsAnswer } from '#explain/questions/conflicts/answer.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { axeFindings } from '../../support/page/axe.js';
import type { FakeApi } from '../../support/page/fake-api.js';
import { heldSolve } from '../../support/page/holdings.js';
import { PageBench, phone } from '../../support/page/open-page.js';

const bench = new PageBench();
beforeAll(() => bench.startBrowser());
afterEach(() => bench.closePages());
afterAll(() => bench.stopBrowser());

const yearly = { kind: 'commitment', id: 'yearly', name: 'One site a year to FY45' } as const;
const money = { kind: 'limit', id: 'money', name: 'money in the funds' } as const;

/** Made for this test; no solver found it. */
const answer: ConflictsAnswer = {
  question: 'conflicts',
  headline: 'No plan is possible: 1 set of promises and limits cannot all hold.',
  sets: [
    {
      members: [yearly, money],
      provenNecessary: ['yearly', 'money'],
      sentence:
        'These cannot all be kept (proven): “One site a year to FY45” and the limit on money in the funds.',
    },
  ],
  repairs: [
    {
      lets: [money],
      prices: [],
      changes: [
        {
          ...{ change: 'add-fund', id: 'money-to-find', name: 'Money to be found' },
          inflows: [
            { year: fiscalYear(2031), dollars: 21_000 },
            { year: fiscalYear(2033), dollars: 6000 },
          ],
        },
      ],
      plan: null,
      sentence: 'A verified plan exists if $27,000 more is found, in FY31 to FY33.',
    },
    {
      lets: [yearly],
      prices: [],
      changes: [{ change: 'aim', commitment: 'yearly' }],
      plan: null,
      sentence: 'A verified plan exists if “One site a year to FY45” becomes an aim.',
    },
  ],
  mostRemoved: 3,
  complete: true,
  made: { rounds: null, seeds: [1], skipped: [], sentence: 'Prices are those of the plan found.' },
};

function withoutPlan(api: FakeApi): void {
  api.holdings.plans = [];
  const conflict = [yearly, money];
  api.holdings.solves = [heldSolve(1, { state: 'done', ending: 'no-plan', conflict })];
}

const change = (api: FakeApi, part: object): void => {
  api.holdings.explanations = api.holdings.explanations.map((one) => ({ ...one, ...part }));
};

test.each([
  ['wide', undefined],
  ['on a phone', phone],
])('%s: sets and repairs are worked out on demand, with what to change', async (_, viewport) => {
  const { page, api, errors } = await bench.open(withoutPlan, viewport, '/');
  await page.getByRole('heading', { level: 1, name: 'No plan can exist' }).waitFor();
  const section = page.locator('#conflicts');
  await section.getByRole('button', { name: 'Work it out' }).click();
  await section.getByText('Waiting for the solver.').waitFor();
  change(api, { state: 'working', progress: { message: 'Pricing the repairs', share: 0.7 } });
  await section.getByText('Working: Pricing the repairs.').waitFor();
  expect(await section.getByRole('progressbar').getAttribute('value')).toBe('0.7');
  change(api, { state: 'done', answer });
  await section.getByText(answer.headline).waitFor();
  const sets = section.getByRole('table', { name: /^Sets of promises and limits/ });
  expect(await sets.locator('tbody tr').innerText()).toContain('the limit on money in the funds');
  const repairs = section.getByRole('table', { name: /^Repairs, the one that gives up least/ });
  const rows = await repairs.locator('tbody tr').allInnerTexts();
  expect(rows).toHaveLength(2);
  expect(rows[0]).toContain(
    'Add a fund that may pay anything and never lapses, with $21,000 in FY31 and $6,000 in FY33.',
  );
  expect(rows[1]).toContain('Set the strength of “One site a year to FY45” to “intended”.');
  const overflow = await page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    return scrollWidth - clientWidth;
  });
  expect(overflow).toBe(0);
  expect(await axeFindings(page)).toEqual([]);
  expect(errors).toEqual([]);
});

test('an answer about an earlier version of the campus is not shown', async () => {
  const { page, api } = await bench.open(withoutPlan, undefined, '/');
  const section = page.locator('#conflicts');
  await section.getByRole('button', { name: 'Work it out' }).click();
  await section.getByText('Waiting for the solver.').waitFor();
  change(api, { state: 'done', answer });
  await section.getByText(answer.headline).waitFor();
  api.holdings.solves = api.holdings.solves.map((solve) => ({ ...solve, campusVersion: 2 }));
  await page.reload();
  await section.getByRole('button', { name: 'Work it out', exact: true }).waitFor();
  expect(await section.getByText(answer.headline).count()).toBe(0);
});
