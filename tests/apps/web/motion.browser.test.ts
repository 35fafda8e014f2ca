/** Who asks for less motion gets none: nothing moves by itself, and the page jumps where it is sent. */
import { chromium, type Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { chromiumLaunchOptions } from '../../support/chromium.js';
import type { RealDesk } from '../../support/page/real-desk.js';
import { startSmallDesk } from '../../support/page/small-desk.js';

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

let desk: RealDesk;
let browser: Browser;
beforeAll(async () => {
  desk = await startSmallDesk();
  browser = await chromium.launch(chromiumLaunchOptions());
});
afterAll(async () => {
  await browser.close();
  await desk.stop();
});

/** How the page scrolls, and elements that a style moves by itself. */
const motion = `({
  scroll: getComputedStyle(document.documentElement).scrollBehavior,
  moving: [...document.querySelectorAll('*')].filter((element) => {
    const { animationName, transitionDuration } = getComputedStyle(element);
    return animationName !== 'none' || transitionDuration.split(', ').some((time) => time !== '0s');
  }).length + document.getAnimations().length,
})`;

async function motionOf(wish: 'reduce' | 'no-preference', view: string): Promise<unknown> {
  const page = await browser.newPage({ reducedMotion: wish });
  await page.goto(`${desk.url}/?view=${view}`);
  await page.waitForLoadState('networkidle');
  const found = await page.evaluate(motion);
  await page.close();
  return found;
}

test.each(['home', 'sites', 'plan', 'next', 'what-if', 'meeting', 'set-up'])(
  'nothing moves in the view "%s"',
  async (view) => {
    expect(await motionOf('reduce', view)).toEqual({ scroll: 'auto', moving: 0 });
  },
);

test('who asks for nothing sees the page scroll smoothly', async () => {
  expect(await motionOf('no-preference', 'plan')).toMatchObject({ scroll: 'smooth' });
});
