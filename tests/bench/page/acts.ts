import type { Page } from 'playwright-core';

/** Something that a reader does, and how long it may take by the page's own goals. */
export interface Act {
  readonly name: string;
  readonly goalMs: number;
  /** Brings the page to where the act begins; not measured. */
  readonly prepare?: (page: Page) => Promise<unknown>;
  readonly act: (page: Page) => Promise<unknown>;
}

const FIRST_VIEW_MS = 1_500;
const ANSWER_MS = 100;

const home = (page: Page): string => new URL('/', page.url()).href;
const find = (page: Page) => page.getByLabel('Find');
const wholeYear = (page: Page) => page.locator('#care').getByRole('radio', { name: 'Year' });

/** From opening the page to its plainest uses, in the order in which they can follow each other. */
export const ACTS: readonly Act[] = [
  {
    name: 'first view',
    goalMs: FIRST_VIEW_MS,
    prepare: (page) => page.goto(`${home(page)}api/health`),
    act: async (page) => {
      await page.goto(home(page));
      await page.getByRole('heading', { level: 1 }).and(page.locator(':not(.loading)')).waitFor();
    },
  },
  {
    name: 'a key in the filter',
    goalMs: ANSWER_MS,
    prepare: async (page) => {
      await page.goto(`${home(page)}?view=sites`);
      await find(page).focus();
    },
    act: (page) => page.keyboard.press('2'),
  },
  {
    name: 'the key taken back',
    goalMs: ANSWER_MS,
    act: (page) => page.keyboard.press('Backspace'),
  },
  {
    name: 'a new order',
    goalMs: ANSWER_MS,
    act: (page) => page.getByRole('button', { name: /^Area/ }).click(),
  },
  {
    name: 'a nearer map',
    goalMs: ANSWER_MS,
    act: (page) => page.getByRole('button', { name: 'Closer' }).click(),
  },
  {
    name: 'another season',
    goalMs: ANSWER_MS,
    prepare: async (page) => {
      await page.goto(`${home(page)}?view=plan`);
      await wholeYear(page).waitFor();
    },
    act: (page) => wholeYear(page).check(),
  },
];
