/** Asking a plan a question: progress while it is worked out, the answer as a table, and how it was found. */
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import type { NextSiteAnswer } from '#explain/questions/next-site/answer.js';
import { axeFindings } from '../../support/page/axe.js';
import type { FakeApi } from '../../support/page/fake-api.js';
import { PageBench } from '../../support/page/open-page.js';

const bench = new PageBench();
beforeAll(() => bench.startBrowser());
afterEach(() => bench.closePages());
afterAll(() => bench.stopBrowser());

const choice = {
  ...{ sites: [], buildTypes: [], regret: null, seedsWorse: 0, seedsRun: 2, firstLimit: null },
  ...{ firstLimitMovesYears: null, busySeason: 'summer', cost: null, giftsUsed: [] },
  ...{ giftsLost: [], openGates: [], reasons: [], against: [] },
};

/** Made for this test; no solver found it. */
const answer: NextSiteAnswer = {
  question: 'next-site',
  year: 'FY28',
  headline: 'Recommended: TVU-19 East Hall Court. TVU-03 cannot be told apart from it.',
  choices: [
    {
      ...choice,
      id: 'a',
      name: 'TVU-19 East Hall Court',
      standing: 'recommended',
      busySeasonHours: 158,
      sentence: 'The best found.',
    },
    {
      ...choice,
      id: 'b',
      name: 'TVU-03 Kiln Hall South Lawn',
      standing: 'tied',
      busySeasonHours: 172,
      sentence: 'Within the gap.',
    },
  ],
  couldBecome: [{ site: 'TVU-26', name: 'Fieldhouse Slope', findOut: [], ifPassed: null }],
  gap: 0.011,
  made: {
    rounds: 40,
    seeds: [1, 2],
    skipped: ['TVU-08'],
    sentence: 'Each with 40 rounds of search.',
  },
};

const change = (api: FakeApi, part: object): void => {
  api.holdings.explanations = api.holdings.explanations.map((one) => ({ ...one, ...part }));
};

test('what else could be chosen is worked out on demand, with ties, tests and what was left out', async () => {
  const { page, api, errors } = await bench.open(undefined, undefined, '/?view=next');
  const section = page.locator('#others');
  await section.getByRole('button', { name: 'Work it out' }).click();
  await section.getByText('Waiting for the solver.').waitFor();
  change(api, { state: 'working', progress: { message: 'TVU-03 forced', share: 0.5 } });
  await section.getByText('Working: TVU-03 forced.').waitFor();
  change(api, { state: 'done', answer });
  await section.getByText(answer.headline).waitFor();
  const rows = section.getByRole('table', { name: 'Choices for next year' }).locator('tbody tr');
  expect(await rows.count()).toBe(2);
  expect(await rows.nth(1).innerText()).toMatch(/TVU-03.*cannot be told apart.*172/s);
  const text = await section.innerText();
  expect(text).toContain('TVU-26 Fieldhouse Slope');
  expect(text).toContain('Each with 40 rounds of search. Left out, as the time was over: TVU-08.');
  expect(await axeFindings(page)).toEqual([]);
  expect(errors).toEqual([]);
});

test('an answer that was given before is there without asking, and a failure says what to do', async () => {
  const { page, api } = await bench.open(undefined, undefined, '/?view=next');
  const section = page.locator('#others');
  await section.getByRole('button', { name: 'Work it out' }).click();
  await section.getByText('Waiting for the solver.').waitFor();
  const problem = {
    ...{ code: 'solver-lost', record: 'question', field: '', value: null, severity: 'error' },
    ...{ problem: 'The solver stopped.', remedy: 'Ask again.' },
  };
  change(api, { state: 'failed', problem });
  await section.getByText('Ask again.').waitFor();
  change(api, { state: 'done', answer, problem: null });
  await page.reload();
  await section.getByText(answer.headline).waitFor();
  await section.getByRole('button', { name: 'Work it out again' }).waitFor();
});
