/** Who asks for less motion gets none: nothing moves by itself, and the page jumps where it is sent. */
import { expect, test } from 'vitest';
import { onSmallDesk } from '../../support/page/on-small-desk.js';

const at = onSmallDesk();

/** How the page scrolls, and elements that a style moves by itself. */
const motion = `({
  scroll: getComputedStyle(document.documentElement).scrollBehavior,
  moving: [...document.querySelectorAll('*')].filter((element) => {
    const { animationName, transitionDuration } = getComputedStyle(element);
    return animationName !== 'none' || transitionDuration.split(', ').some((time) => time !== '0s');
  }).length + document.getAnimations().length,
})`;

async function motionOf(wish: 'reduce' | 'no-preference', view: string): Promise<unknown> {
  await at.open(`/?view=${view}`, wish);
  await at.page.waitForLoadState('networkidle');
  return at.page.evaluate(motion);
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
