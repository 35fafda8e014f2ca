import type { CDPSession, Page } from 'playwright-core';
import type { Act } from './acts.js';

/** Long enough for what an act set off, such as rows that are drawn a moment later. */
const SETTLE = 'new Promise((done) => requestAnimationFrame(() => setTimeout(done, 200)))';

/**
 * Milliseconds that an act keeps the page's main thread, by that thread's own clock: other work of
 * the machine does not count, so it is what a reader of an idle machine waits at most.
 */
export async function mainThreadTime(page: Page, { prepare, act }: Act): Promise<number> {
  await prepare?.(page);
  await page.evaluate(SETTLE);
  const session = await page.context().newCDPSession(page);
  try {
    await session.send('Performance.enable', { timeDomain: 'threadTicks' });
    const before = await busy(session);
    await act(page);
    await page.evaluate(SETTLE);
    return (await busy(session)) - before;
  } finally {
    await session.detach();
  }
}

async function busy(session: CDPSession): Promise<number> {
  const { metrics } = await session.send('Performance.getMetrics');
  return 1000 * (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN);
}
