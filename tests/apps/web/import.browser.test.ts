/** Bringing sites in from a file: a dry run names every mistake with its remedy, and saves nothing. */
import { expect, test } from 'vitest';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import { digestOf } from '#contracts/canonical.js';
import type { PlanFile } from '#contracts/plan-file.js';
import { writeBundle } from '#exchange/bundle/write-bundle.js';
import { axeFindings } from '../../support/page/axe.js';
import { startDesk } from '../../support/page/real-desk.js';
import { onSmallDesk } from '../../support/page/on-small-desk.js';

const at = onSmallDesk();

/** The sites of the small campus as the program itself writes them. */
async function exported(): Promise<string[][]> {
  const response = await fetch(`${at.desk.url}/api/campuses/${at.desk.campusId}/exports/csv`);
  const text = (await response.text()).replace(/^\uFEFF/, '');
  return text
    .trimEnd()
    .split(/\r?\n/)
    .map((line) => line.split(','));
}

const choose = (text: string, name = 'sites.csv') =>
  at.page
    .getByLabel('File with sites')
    .setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });

test('twenty mistakes are reported by row, with what to do, and nothing is saved', async () => {
  const rows = await exported();
  const header = rows[0]!;
  const area = header.findIndex((name) => /area/i.test(name));
  const id = header.findIndex((name) => name === 'id' || /^site/i.test(name));
  const sample = rows[1]!;
  const wrong = Array.from({ length: 20 }, (_, index) =>
    sample.map((cell, at) =>
      at === id ? `N-${index + 1}` : at === area ? `${index} acres-ish` : cell,
    ),
  );
  await at.open('/?view=set-up');
  await choose([header, ...wrong].map((row) => row.join(',')).join('\n'));
  await at.page.getByText('20 to mend').waitFor();
  await at.page.getByText('Nothing can be saved while a row is to be mended.').waitFor();
  const report = at.page.getByRole('table', { name: 'What the file would do' }).locator('tbody tr');
  expect(await report.count()).toBe(20);
  const texts = await report.allInnerTexts();
  for (const [index, text] of texts.entries()) {
    expect(text).toContain(`row ${index + 2}`);
    expect(text).toContain('to mend');
  }
  expect(await at.page.getByRole('button', { name: 'Save these sites' }).count()).toBe(0);
  expect(await axeFindings(at.page)).toEqual([]);
  expect((await at.desk.store.campuses.load(at.desk.campusId))?.version).toBe(1);
});

test('a file without mistakes is saved as it was run dry', async () => {
  const rows = await exported();
  const name = rows[0]!.indexOf('name');
  const changed = rows.map((row, index) =>
    index === 1 ? row.map((cell, at) => (at === name ? 'Library Lawn' : cell)) : row,
  );
  await at.open('/?view=set-up');
  await choose(changed.map((row) => row.join(',')).join('\n'));
  await at.page.getByText('1 changed').waitFor();
  await at.page.getByText('becomes Library Lawn').waitFor();
  await at.page.getByRole('button', { name: 'Save these sites' }).click();
  await at.page.getByText('Saved as version 2 of the campus.').waitFor();
  const held = await at.desk.store.campuses.load(at.desk.campusId);
  expect(JSON.stringify(held?.document['candidateSites'])).toContain('Library Lawn');
});

test('a bundle puts the campus and its plan back; a plan that does not hold is left out', async () => {
  const { campuses, plans } = at.desk.store;
  const { plan } = (await plans.load(at.desk.planId))!;
  const document = (await campuses.load(at.desk.campusId))!.document as unknown as CampusFile;
  const sound = plan as unknown as PlanFile;
  const spoiled = structuredClone(sound);
  spoiled.plan.spending[0]!.dollars += 1000;
  const of = digestOf(document);
  const digested = (file: PlanFile) => ({ ...file, campus: { ...file.campus, digest: of } });
  const bytes = writeBundle(document, new Map([['spoiled', digested(spoiled)]]));
  await at.open('/?view=set-up');
  const link = at.page.getByRole('link', { name: 'campus bundle' });
  expect(await link.getAttribute('href')).toBe(`/api/campuses/${at.desk.campusId}/exports/bundle`);
  const choosing = at.page.getByLabel('File with sites, or a bundle');
  const file = { name: 'campus.zip', mimeType: 'application/zip', buffer: Buffer.from(bytes) };
  await choosing.setInputFiles(file);
  await at.page.getByText('spoiled: comes in if it passes the checks').waitFor();
  await at.page.getByRole('button', { name: 'Save what the bundle holds' }).click();
  await at.page.getByText('spoiled: not kept.').waitFor();
  await at.page.getByText('The plan does not pass the checks of its campus').waitFor();
  expect(await axeFindings(at.page)).toEqual([]);

  const whole = writeBundle(document, new Map([['sound', digested(sound)]]));
  await choosing.setInputFiles({ ...file, buffer: Buffer.from(whole) });
  await at.page.getByRole('button', { name: 'Save what the bundle holds' }).click();
  await at.page.getByText('sound: passed every check and is kept.').waitFor();
  await at.page.getByRole('button', { name: 'Show it' }).click();
  await expect.poll(() => at.page.url()).toMatch(/plan=[0-9a-f-]+/);
  const plansToChoose = at.page.locator('.choosers option');
  await expect
    .poll(() => plansToChoose.allTextContents())
    .toContainEqual(expect.stringMatching(/^From a bundle, /));
});

test('from nothing: the sample campus is loaded, and a site of six facts joins it', async () => {
  const empty = await startDesk(null, {
    solve: async () => ({ ending: 'no-plan', plan: null, solverVersion: '', conflict: [] }),
  });
  await at.open(`${empty.url}/?view=set-up`);
  await at.page.getByRole('button', { name: 'Load the sample campus' }).click();
  await at.page.getByText('Tamarack Vale University is loaded.').waitFor();
  await at.page.getByLabel('Short name').fill('TVU-40');
  await at.page.getByLabel('Name', { exact: true }).fill('Archive Lawn');
  await at.page.getByLabel('Zone').selectOption({ index: 1 });
  await at.page.getByLabel('Area, sq').fill('4,000');
  await at.page.getByLabel('Build type').selectOption({ index: 1 });
  await at.page.getByLabel('Earliest year').selectOption('FY30');
  await at.page.reload();
  expect(await at.page.getByLabel('Short name').inputValue()).toBe('TVU-40');
  await at.page.getByRole('button', { name: 'Add the site' }).click();
  await at.page.getByText('TVU-40 is added.').waitFor();
  await at.page.getByRole('link', { name: 'Open its record' }).click();
  await at.page.getByRole('heading', { name: 'TVU-40 Archive Lawn' }).waitFor();
  expect(await at.page.locator('.record').innerText()).toContain('unknown');
  await empty.stop();
});
