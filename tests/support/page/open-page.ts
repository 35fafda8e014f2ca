import { chromium, type Browser, type Page } from 'playwright-core';
import { chromiumLaunchOptions } from '../chromium.js';
import { FakeApi } from './fake-api.js';
import { heldCampus, heldPlan } from './holdings.js';
import { overviewFixture } from './overview-fixture.js';

export interface OpenPage {
  readonly page: Page;
  readonly api: FakeApi;
  /** Errors that the page threw or logged, except failed requests. */
  readonly errors: string[];
}

const desktop = { width: 1280, height: 900 };
export const phone = { width: 360, height: 740 };

/** Starts and stops the browser and one fake api for each test of a file. */
export class PageBench {
  #browser: Browser | undefined;
  #apis: FakeApi[] = [];

  async startBrowser(): Promise<void> {
    this.#browser = await chromium.launch(chromiumLaunchOptions());
  }

  async stopBrowser(): Promise<void> {
    await this.#browser?.close();
  }

  /** A page on an api that holds one campus and one plan, unless `prepare` changes that. */
  async open(
    prepare: (api: FakeApi) => void = () => undefined,
    viewport: { width: number; height: number } = desktop,
    path = '/?view=plan',
  ): Promise<OpenPage> {
    if (this.#browser === undefined) throw new Error('startBrowser() comes first');
    const api = new FakeApi();
    this.#apis.push(api);
    api.holdings.campuses = [heldCampus()];
    api.holdings.plans = [heldPlan(1, overviewFixture())];
    prepare(api);
    const context = await this.#browser.newContext({ viewport, reducedMotion: 'reduce' });
    const page = await context.newPage();
    const errors: string[] = [];
    page.on('pageerror', (error) => errors.push(error.message));
    page.on('console', (message) => {
      const text = message.text();
      if (message.type() === 'error' && !text.startsWith('Failed to load')) errors.push(text);
    });
    await page.goto(`${await api.start()}${path}`);
    return { page, api, errors };
  }

  async closePages(): Promise<void> {
    for (const context of this.#browser?.contexts() ?? []) await context.close();
    await Promise.all(this.#apis.map((api) => api.stop()));
    this.#apis = [];
  }
}
