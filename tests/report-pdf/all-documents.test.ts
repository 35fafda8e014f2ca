/**
 * Every kind of document of the demo, read back from its bytes with libraries that did not write
 * them: the clauses of PDF/UA-1, the marks of every page, and that nothing overlaps.
 */
import { expect, test } from 'vitest';
import { PDFName } from 'pdf-lib';
import { documentOf, usualDocuments } from '#planning/documents/plan-documents.js';
import { documentKinds } from '#planning/ports/document-writer.js';
import { renderPdf } from '#report-pdf/render-pdf.js';
import { rawPdf } from '../support/pdf/raw-objects.js';
import { expectTidy } from '../support/pdf/tidy.js';
import { uaBreaches } from '../support/pdf/ua-clauses.js';
import { pageText, readPdf } from '../support/pdf-reading.js';
import { demoSource } from '../support/plan-source.js';

const source = demoSource('strained');
const wishes = usualDocuments(source);
const edition = { planVersion: 'a1b2c3d4', createdAt: '2026-11-25' } as const;

test('the demo has every kind of document', () => {
  expect(new Set(wishes.map(({ kind }) => kind))).toEqual(new Set(documentKinds));
});

test.each(wishes)('$kind $site keeps PDF/UA-1 and bears its marks on every page', async (wish) => {
  const bytes = await renderPdf(documentOf(source, wish, edition));
  expect(await uaBreaches(bytes)).toEqual([]);
  const pdf = await readPdf(bytes);
  expectTidy(pdf);
  const { program } = source.campus;
  const [gap] = source.overview.solve.sentence.split(' of ');
  pdf.pages.forEach((page, index) => {
    const text = pageText(page).replace(/\s+/g, ' ');
    const number = `Page ${index + 1} of ${pdf.pages.length}`;
    const marks = [program, 'Plan a1b2c3d4', 'November 25, 2026', 'Draft, not approved', number];
    for (const mark of [...marks, gap!]) expect(text).toContain(mark);
  });
});

test('who approved a document stands on every page instead', async () => {
  const approved = { ...edition, approvedBy: 'R. Okafor' };
  const wish = { kind: 'work-calendar' } as const;
  const pdf = await readPdf(await renderPdf(documentOf(source, wish, approved)));
  for (const page of pdf.pages) {
    expect(pageText(page)).toContain('R. Okafor');
    expect(pageText(page)).not.toContain('Draft');
  }
});

test('a file without its language, its marks or its title in the window is told from a whole one', async () => {
  const raw = await rawPdf(
    await renderPdf(documentOf(source, { kind: 'staffing-request' }, edition)),
  );
  for (const key of ['Lang', 'ViewerPreferences', 'MarkInfo']) {
    raw.catalog.delete(PDFName.of(key));
  }
  const breaches = await uaBreaches(await raw.file.save({ useObjectStreams: false }));
  expect(breaches.map((line) => line.split(':')[0])).toEqual([
    '7.1 file is marked as tagged',
    '7.1 title is shown',
    '7.2 language',
  ]);
});
