/** Campuses with next to nothing: every view says something sensible, and nothing breaks. */
import { chromium, type Browser, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import type { JsonDocument } from '#planning/json-document.js';
import { chromiumLaunchOptions } from '../../support/chromium.js';
import { axeFindings } from '../../support/page/axe.js';
import { startDesk, type RealDesk } from '../../support/page/real-desk.js';
import { planDocument } from '../../support/page/small-desk.js';
import { smallFile, type Placed } from '../../support/small-campus.js';

vi.setConfig({ testTimeout: 120_000, hookTimeout: 60_000 });

let browser: Browser;
beforeAll(async () => {
  browser = await chromium.launch(chromiumLaunchOptions());
});
afterAll(() => browser.close());

type File = Record<string, unknown[]>;

/** The small campus with no site but one, or none, and nothing that speaks of the others. */
function withOnly(kept: string | null): File {
  const file = smallFile() as unknown as File;
  const isOfOthers = (part: unknown): boolean => {
    const sites = JSON.stringify(part).match(/"S-E?\d+"/g) ?? [];
    return sites.some((site) => site !== `"${kept}"`);
  };
  const lists = ['candidateSites', 'existingSites', 'handPlacements', 'precedence', 'funds'];
  for (const list of [...lists, 'exclusiveGroups', 'commitments', 'construction']) {
    file[list] = file[list]!.filter((part) => !isOfOthers(part));
  }
  return file;
}

function withoutMoney(): File {
  const file = smallFile() as unknown as File;
  file['standingCosts'] = [];
  file['funds'] = file['funds']!.map((fund) => {
    const text = JSON.stringify(fund).replace(/("\w*Dollars":)\d+/g, '$10');
    return JSON.parse(text) as unknown;
  });
  return file;
}

interface Bare {
  readonly file: File;
  /** Left out: no plan has been made. */
  readonly placed?: readonly Placed[];
  /** What a view says, by its name in the address. */
  readonly says: Readonly<Record<string, string>>;
}

const bare: Readonly<Record<string, Bare>> = {
  'no site at all': {
    file: withOnly(null),
    placed: [],
    says: {
      home: 'Nothing is recorded as unknown.',
      sites: 'The campus has no site yet.',
      plan: 'The campus has no candidate site.',
      next: 'The campus has no candidate site.',
      meeting: 'The campus has no candidate site.',
    },
  },
  'one site': {
    file: withOnly('S-1'),
    placed: [['S-1', 'edible', 2028]],
    says: { home: 'S-1 Library Steps', sites: '1 site of 1', plan: '1 of 1 candidate site built' },
  },
  'no money': {
    file: withoutMoney(),
    placed: [],
    says: { plan: '$0 of capital', next: 'No site is to be prepared in FY28.' },
  },
  'no plan yet': {
    file: smallFile() as unknown as File,
    says: {
      home: 'No plan yet',
      sites: '5 sites of 5',
      plan: 'Solve to make the first one.',
      next: 'No plan yet',
      'what-if': 'No plan yet',
      meeting: 'No plan yet',
    },
  },
};

const views = ['home', 'sites', 'plan', 'next', 'what-if', 'meeting', 'set-up'];

async function startBare({ file, placed }: Bare): Promise<RealDesk> {
  const campus = file as unknown as JsonDocument;
  const solving = { solve: () => Promise.reject(new Error('nothing is solved here')) };
  if (placed !== undefined) {
    return startDesk({ campus, plan: planDocument(campus, placed) }, solving);
  }
  const desk = await startDesk(null, solving);
  await desk.store.campuses.add({ name: String(campus['name']), document: campus });
  return desk;
}

async function opened(page: Page, address: string): Promise<string> {
  await page.goto(address);
  await page.getByRole('heading', { level: 1 }).and(page.locator(':not(.loading)')).waitFor();
  await page.waitForLoadState('networkidle');
  await page.evaluate("document.querySelectorAll('details').forEach((part) => (part.open = true))");
  return page.locator('main').innerText();
}

// Side by side: each view is waited for until the network rests.
test.concurrent.each(Object.entries(bare))('%s', async (_name, campus) => {
  const desk = await startBare(campus);
  const page = await browser.newPage({ reducedMotion: 'reduce' });
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  for (const view of views) {
    const text = await opened(page, `${desk.url}/?view=${view}`);
    expect(text, view).toContain(campus.says[view] ?? '');
    expect(await page.content(), view).not.toMatch(/NaN|undefined|Infinity|\[object/);
    expect(await axeFindings(page, { without: ['color-contrast'] }), view).toEqual([]);
  }
  expect(errors).toEqual([]);
  await page.close();
  await desk.stop();
});
