import { findProgram } from './programs.js';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];

/** The Chromium to test the page in: CHROMIUM_PATH if set, else the first one on PATH. */
export function findChromium(): string | undefined {
  const chosen = process.env['CHROMIUM_PATH'];
  if (chosen !== undefined && chosen !== '') return findProgram(chosen);
  return NAMES.map(findProgram).find((path) => path !== undefined);
}

/**
 * Flags for a browser that a test drives: no sandbox (it refuses to run as root), and none of the
 * background calls home that fail one by one where there is no open network.
 */
export const CHROMIUM_FLAGS: readonly string[] = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-dev-shm-usage',
];

/** Launch options for playwright-core's `chromium.launch`, headless. */
export function chromiumLaunchOptions(): {
  executablePath: string;
  args: string[];
  headless: true;
} {
  const executablePath = findChromium();
  if (executablePath === undefined) {
    throw new Error('No Chromium: name the test file *.browser.test.ts, so that it is left out');
  }
  return { executablePath, args: [...CHROMIUM_FLAGS], headless: true };
}
