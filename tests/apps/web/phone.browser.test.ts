/** A walk over the ground with a phone of 360 px: find the site, read what is open, note what was measured. */
import { expect, test } from 'vitest';
import { axeFindings } from '../../support/page/axe.js';
import { onSmallDesk } from '../../support/page/on-small-desk.js';
import { phone } from '../../support/page/open-page.js';

const at = onSmallDesk();

/** Boxes and the page itself that are wider inside than out. */
const sideways = `[...document.querySelectorAll('.table-box.is-stacked, .table-box.is-fitted, html')]
  .filter((box) => box.scrollWidth > box.clientWidth)
  .map((box) => box.textContent.slice(0, 60))`;

async function openOnPhone(path: string): Promise<void> {
  await at.open(path);
  await at.page.setViewportSize(phone);
}

test('the walk: a site is found, its open gates are read, a value is noted and kept', async () => {
  await openOnPhone('/?view=sites');
  await at.page.getByLabel('Find').fill('dock');
  await at.page.getByRole('button', { name: 'S-4 Dock Green' }).click();
  await at.page.getByRole('heading', { level: 2, name: 'S-4 Dock Green' }).waitFor();
  await at.page.getByRole('table', { name: /^Gates not on record yet/ }).waitFor();
  expect(await at.page.evaluate(sideways)).toEqual([]);
  const gates = at.page.getByRole('table', { name: 'Screening gates' });
  expect(await gates.getByRole('row').first().getByRole('columnheader').count()).toBe(4);
  expect(await gates.locator('tbody').innerText()).toContain('unknown');

  await at.page.getByRole('button', { name: 'Edit the site' }).click();
  await at.page.getByLabel('pH').fill('6.9');
  await at.page.getByLabel('Slope, %').fill('2');
  expect(await at.page.evaluate(sideways)).toEqual([]);
  expect(await axeFindings(at.page)).toEqual([]);
  await at.page.getByRole('button', { name: 'Save the site' }).click();
  await at.page.getByText(/^Saved\./).waitFor();
  const held = await at.desk.store.campuses.load(at.desk.campusId);
  const sites = held?.document['candidateSites'] as { id: string; facts: object }[];
  expect(sites.find(({ id }) => id === 'S-4')?.facts).toMatchObject({ ph: 6.9, slopePercent: 2 });
});

test('a form holds a site whose name is longer than the screen is wide', async () => {
  for (const [view, form] of [
    ['next', '.decision-form'],
    ['plan', '.change-form'],
  ] as const) {
    await openOnPhone(`/?view=${view}`);
    await at.page.locator(form).waitFor();
    await at.page.evaluate(
      `document.querySelector('${form} option').textContent = 'A long name of a site '.repeat(5)`,
    );
    expect(await at.page.evaluate(sideways)).toEqual([]);
    const right = await at.page.evaluate(
      `Math.max(...[...document.querySelectorAll('${form} :is(input, select, textarea)')]
        .map((one) => one.getBoundingClientRect().right))`,
    );
    expect(right).toBeLessThanOrEqual(phone.width);
  }
});

test.each(['plan', 'next', 'what-if', 'set-up'])(
  'tables of words in the view "%s" are lists that fit, each cell under the name of its column',
  async (view) => {
    await openOnPhone(`/?view=${view}`);
    await at.page.locator('.table-box.is-stacked').first().waitFor({ state: 'attached' });
    await at.page.waitForLoadState('networkidle');
    await at.page.evaluate(
      "document.querySelectorAll('details').forEach((part) => (part.open = true))",
    );
    expect(await at.page.evaluate(sideways)).toEqual([]);
    const names = await at.page
      .locator('.table-box.is-stacked')
      .first()
      .evaluate((box) => ({
        heads: [...box.querySelectorAll('thead th')].map((head) => head.textContent),
        cells: [...box.querySelectorAll('tbody tr:first-child td:not(:empty, .is-plain)')].map(
          (cell) =>
            getComputedStyle(cell, '::before').content.replaceAll('"', '').replace(/: ?$/, ''),
        ),
      }));
    expect(names.cells.length).toBeGreaterThan(0);
    for (const cell of names.cells) expect(names.heads).toContain(cell.split(' ": ')[0]);
  },
);
