import { chromium, type Browser, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, vi } from 'vitest';
import { chromiumLaunchOptions } from '../chromium.js';
import type { RealDesk } from './real-desk.js';
import { startSmallDesk } from './small-desk.js';

/** The small desk of a test file, and the page that its test has open. */
export interface OnSmallDesk {
  readonly desk: RealDesk;
  readonly page: Page;
  /**
   * Opens a page at a path of the desk, or at a whole address; it is closed after the test.
   *
   * @param motion what the reader's system asks of motion; left out: less
   */
  open(address: string, motion?: 'reduce' | 'no-preference'): Promise<void>;
}

/** Starts the small desk and a browser for all tests of a file, and stops them after the last. */
export function onSmallDesk(): OnSmallDesk {
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
  return {
    get desk() {
      return desk;
    },
    get page() {
      return page;
    },
    async open(address, motion = 'reduce') {
      page = await browser.newPage({ reducedMotion: motion });
      await page.goto(new URL(address, desk.url).href);
    },
  };
}
