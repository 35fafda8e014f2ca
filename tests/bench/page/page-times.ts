import { chromium, type Browser } from 'playwright-core';
import { chromiumLaunchOptions } from '../../support/chromium.js';
import { median } from '../measure.js';
import { ACTS } from './acts.js';
import { mainThreadTime } from './main-thread.js';
import { startMeasuredDesk, type DeskSize } from './measured-desk.js';

/** What one act costs on campuses of several sizes. */
export interface ActTimes {
  readonly name: string;
  readonly goalMs: number;
  /** Median milliseconds of the main thread, in the order of the sizes. */
  readonly medianMs: readonly number[];
}

/** Measures every act on each size of campus, so many times each. */
export async function pageTimes(
  sizes: readonly DeskSize[],
  { rounds }: { readonly rounds: number },
): Promise<readonly ActTimes[]> {
  const browser = await chromium.launch(chromiumLaunchOptions());
  try {
    const bySize: (readonly number[])[] = [];
    for (const size of sizes) bySize.push(await timesOf(browser, size, rounds));
    return ACTS.map(({ name, goalMs }, place) => ({
      ...{ name, goalMs },
      medianMs: bySize.map((medians) => medians[place] ?? Number.NaN),
    }));
  } finally {
    await browser.close();
  }
}

async function timesOf(browser: Browser, size: DeskSize, rounds: number): Promise<number[]> {
  const desk = await startMeasuredDesk(size);
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  try {
    await page.goto(desk.url);
    const times = ACTS.map((): number[] => []);
    for (let round = 0; round < rounds; round += 1) {
      for (const [place, act] of ACTS.entries()) {
        times[place]?.push(await mainThreadTime(page, act));
      }
    }
    return times.map(median);
  } finally {
    await page.close();
    await desk.stop();
  }
}
