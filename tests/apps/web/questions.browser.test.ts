/** Asking a plan a question: progress while it is worked out, the answer as a table, and how it was found. */
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { futures } from '#futures/futures.js';
import { meetFutures } from '#futures/meet-futures.js';
import type { NextSiteAnswer } from '#explain/questions/next-site/answer.js';
import { axeFindings } from '../../support/page/axe.js';
import type { FakeApi } from '../../support/page/fake-api.js';
import { heldExplanation, planId, subjectOfPlan } from '../../support/page/holdings.js';
import { PageBench } from '../../support/page/open-page.js';
import { planOf, smallCampus } from '../../support/small-campus.js';

const bench = new PageBench();
beforeAll(() => bench.startBrowser());
afterEach(() => bench.closePages());
afterAll(() => bench.stopBrowser());

const choice = {
  ...{ sites: [], buildTypes: [], regret: null, seedsWorse: 0, seedsRun: 2, firstLimit: null },
  ...{ firstLimitMovesYears: null, busySeason: 'summer', cost: null, giftsUsed: [] },
  ...{ giftsLost: [], openGates: [], reasons: [], against: [] },
  comparedWith: null,
  rounds: 200,
};

/** Made for this test; no solver found it. */
const answer: NextSiteAnswer = {
  question: 'next-site',
  year: 'FY28',
  firstOpenYear: 'FY28',
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
      id: 'c',
      name: 'No site',
      standing: 'not-found',
      busySeasonHours: 0,
      sentence: 'No plan with it was found, and none was ruled out.',
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
  couldBecome: [{ site: 'TVU-26', name: 'TVU-26 Fieldhouse Slope', findOut: [], ifPassed: null }],
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
  expect(await rows.count()).toBe(3);
  expect(await rows.nth(1).innerText()).toMatch(/No site.*not known/s);
  expect(await rows.nth(2).innerText()).toMatch(/TVU-03.*cannot be told apart.*172/s);
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

  // It left something out, so more time is offered; the api is told how much.
  const asked = page.waitForRequest((request) => request.method() === 'POST');
  await section.getByRole('button', { name: 'Take two minutes for it' }).click();
  expect((await asked).postDataJSON()).toMatchObject({ seconds: 120 });
});

test('other futures: bands of care and of promises, with tables that say what sampling leaves open', async () => {
  const campus = smallCampus();
  const plan = planOf(campus, [
    ['S-1', 'edible', 2028],
    ['S-2', 'pollinator', 2030],
  ]);
  const answer = await futures({
    ...{ campus, plan, seed: 1, futures: 60, mended: 20, onStep: () => undefined },
    runner: { parallel: 1, run: (order) => Promise.resolve(meetFutures(order)) },
  });
  const question = { kind: 'futures', futures: 1000, seed: 1 } as const;
  const held = { ...heldExplanation(subjectOfPlan(planId(1)), question), state: 'done' as const };
  const { page, errors } = await bench.open(
    (api) => {
      api.holdings.explanations = [{ ...held, answer: JSON.parse(JSON.stringify(answer)) }];
    },
    undefined,
    '/?view=what-if',
  );
  const section = page.locator('#futures');
  await section.getByText(answer.headline).waitFor();
  const summers = answer.fixed.seasons.filter(({ season }) => season === 'summer');
  await section.getByText('Summer in the futures as a table').click();
  const care = section.getByRole('table', { name: /^Summer: effective hours/ });
  expect(await care.locator('tbody tr').count()).toBe(summers.length);
  const inTable = (cell: string | { readonly value: number }): string =>
    typeof cell === 'string'
      ? cell.replace(/[()]/g, '\\$&')
      : (Math.round(cell.value / 10) * 10).toLocaleString('en-US');
  const { label, wanted } = summers[2]!;
  expect(await care.locator('tbody tr').nth(2).innerText()).toMatch(
    new RegExp([label, wanted.p10, wanted.p50, wanted.p90].map(inTable).join('\\s+')),
  );

  await section.getByLabel('Promise').selectOption(answer.fixed.promises[0]!.id);
  await section.getByText('Promise by year as a table').click();
  const kept = section.getByRole('table', { name: /share of the futures in which it is kept/ });
  const percent = (share: number): string => `${Math.round(100 * share)}%`;
  const last = answer.fixed.promises[0]!.keptThrough.at(-1)!;
  const expected =
    last.share === 1
      ? 'all'
      : `${percent(last.share)} (${percent(last.low)} to ${percent(last.high)})`;
  expect(await kept.locator('tbody tr').last().innerText()).toContain(expected);
  expect(await section.getByRole('img').count()).toBe(2);
  expect(await axeFindings(page)).toEqual([]);
  expect(errors).toEqual([]);
});
