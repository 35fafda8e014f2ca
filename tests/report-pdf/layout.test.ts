import { expect, test } from 'vitest';
import { caution, options } from '#report/document/boxes.js';
import { fact, keyFacts } from '#report/document/key-facts.js';
import type { Block, PlanDocument } from '#report/document/plan-document.js';
import { numberColumn, row, table, textColumn } from '#report/document/table.js';
import { heading, list, pageBreak, paragraph } from '#report/document/text-blocks.js';
import { renderPdf } from '#report-pdf/render-pdf.js';
import { expectTidy } from '../support/pdf/tidy.js';
import { allElements, elementText, pageText, readPdf } from '../support/pdf-reading.js';
import { documentOf, sampleBlocks } from '../support/sample-document.js';
import { sampleFigures } from '../support/sample-figures.js';

const LONG_NAME =
  'Department of Landscape Stewardship, Edible Perennials and Very Long Official Names';
const LONG_WORD = 'Donaudampfschifffahrtsgesellschaftskapitänswitwenrentenauszahlungsstelle';

const printed = async (blocks: readonly Block[], change: Partial<PlanDocument> = {}) =>
  readPdf(await renderPdf(documentOf(blocks, change)));

test.each(['letter', 'a4'] as const)(
  'text stays within the margins of %s and clear of other text',
  async (paper) => {
    const pdf = await printed([...sampleBlocks, ...sampleFigures], { paper });
    const [width, height] = paper === 'letter' ? [612, 792] : [595.28, 841.89];
    expect(pdf.pages[0]!.width).toBeCloseTo(width, 1);
    expect(pdf.pages[0]!.height).toBeCloseTo(height, 1);
    expectTidy(pdf, paper === 'letter' ? 72 : 63.6);
  },
);

test('a table of 200 rows has its header row and its caption on every page it reaches', async () => {
  const rows = Array.from({ length: 200 }, (_, n) =>
    row(`Site ${n + 1}`, String(n * 37), LONG_NAME),
  );
  const columns = [textColumn('Site name'), numberColumn('Hours'), textColumn('Keeper')];
  const pdf = await printed([table({ caption: 'All sites', columns, rows })]);
  expect(pdf.pages.length).toBeGreaterThan(6);
  for (const [index, page] of pdf.pages.entries()) {
    expect(page.boxes.filter(({ text }) => text.trim() === 'Site name')).toHaveLength(1);
    expect(pageText(page)).toContain(index === 0 ? 'All sites' : 'All sites, continued');
  }
  expectTidy(pdf);
  const names = allElements(pdf, 'TH').map(elementText);
  expect(names).toEqual(['Site name', 'Hours', 'Keeper', ...rows.map((_, n) => `Site ${n + 1}`)]);
});

test('no row is split: all lines of a row are on one page', async () => {
  const rows = Array.from({ length: 60 }, (_, n) => row(`R${n}a R${n}b`, `${LONG_NAME} end${n}`));
  const columns = [textColumn('Row', 0.2), textColumn('Words', 0.4), textColumn('More', 3)];
  const pdf = await printed([
    table({ caption: 'Rows', columns, rows: rows.map(({ cells }) => row(...cells, '')) }),
  ]);
  for (let n = 0; n < 60; n += 1) {
    const pages = pdf.pages.filter((page) => new RegExp(`R${n}a|end${n}\\b`).test(pageText(page)));
    expect(pages).toHaveLength(1);
  }
});

test('a row taller than a page goes on over pages and loses no word', async () => {
  const words = Array.from({ length: 3000 }, (_, n) => `w${n}`).join(' ');
  const columns = [textColumn('Site'), textColumn('Remark')];
  const pdf = await printed([table({ caption: 'Remarks', columns, rows: [row('One', words)] })]);
  expectTidy(pdf);
  expect(allElements(pdf, 'TD').map(elementText)).toEqual([words]);
});

test('the longest names and words wrap everywhere and lose no letter', async () => {
  const columns = Array.from({ length: 8 }, (_, n) =>
    textColumn(n === 0 ? LONG_WORD : `Column ${n}`),
  );
  const cells = columns.map((_, n) => (n % 2 === 0 ? LONG_WORD : LONG_NAME));
  const pdf = await printed(
    [
      heading(1, LONG_NAME.repeat(3)),
      paragraph(LONG_WORD.repeat(6)),
      list('bullet', [LONG_WORD.repeat(3)]),
      keyFacts([fact(LONG_WORD, LONG_WORD), fact(LONG_NAME, LONG_NAME)], 2),
      table({ caption: LONG_NAME, columns, rows: [row(...cells)], note: LONG_WORD.repeat(4) }),
      caution(LONG_NAME, [LONG_WORD.repeat(4)]),
      options(
        [1, 2, 3, 4].map((n) => ({
          title: LONG_WORD,
          summary: LONG_NAME,
          facts: [fact(LONG_NAME, LONG_WORD)],
          points: n === 2 ? [] : [LONG_WORD],
        })),
      ),
    ],
    {
      title: LONG_NAME.repeat(2),
      program: LONG_NAME.repeat(3),
      solveNote: LONG_NAME.repeat(4),
      planVersion: LONG_WORD.repeat(2),
    },
  );
  expectTidy(pdf);
  const letters = (text: string) => text.replace(/\s/g, '');
  const cellText = [...allElements(pdf, 'TD'), ...allElements(pdf, 'TH')].map((one) =>
    letters(elementText(one)),
  );
  for (const cell of cells) expect(cellText).toContain(letters(cell));
});

test('a heading is never the last thing on a page', async () => {
  for (let lines = 25; lines < 34; lines += 1) {
    const filler = Array.from({ length: lines }, (_, n) => `Item ${n}`);
    const pdf = await printed([
      list('bullet', filler),
      heading(1, 'Late heading'),
      paragraph('After it.'),
    ]);
    const page = pdf.pages.find((one) => pageText(one).includes('Late heading'))!;
    expect(pageText(page)).toContain('After it.');
  }
});

test('a page break starts one page, however often it is asked for', async () => {
  const pdf = await printed([
    pageBreak(),
    paragraph('A'),
    pageBreak(),
    pageBreak(),
    paragraph('B'),
    pageBreak(),
  ]);
  expect(
    pdf.pages.map(
      (page) =>
        /\b[AB]\b/.exec(pageText({ ...page, boxes: page.boxes.filter((b) => b.size > 10) }))?.[0],
    ),
  ).toEqual([undefined, 'A', 'B']);
});

test('every page names program, version, data date, status, page and solve note', async () => {
  const pdf = await printed([paragraph('A'), pageBreak(), paragraph('B')], { status: 'approved' });
  pdf.pages.forEach((page, index) => {
    const footer = page.boxes
      .filter(({ top }) => top > page.height - 70)
      .map(({ text }) => text)
      .join(' ');
    const parts = [
      'Tamarack Vale University landscape program',
      'Plan sample-3',
      'Data as of 2026-02-14',
      'Approved',
      `Page ${index + 1} of 2`,
      'the gap is unknown',
    ];
    for (const part of parts) expect(footer).toContain(part);
  });
});

test('options longer than a page go on, side by side, on the next', async () => {
  const points = Array.from({ length: 90 }, (_, n) => `Point ${n}`);
  const option = { title: 'Long', summary: 'S', facts: [fact('Cost', '1')], points };
  const pdf = await printed([options([option, { ...option, points: ['Only one'] }])]);
  expect(pdf.pages.length).toBeGreaterThan(2);
  expectTidy(pdf);
  expect(allElements(pdf, 'LBody').map(elementText)).toEqual(['1', ...points, '1', 'Only one']);
});

test('characters without a shape are printed as their number', async () => {
  const pdf = await printed([paragraph('Ahorn 中 and 🌱, fi\u00adt\u0000.')]);
  expect(pageText(pdf.pages[0]!)).toContain('Ahorn [U+4E2D] and [U+1F331], fit');
});
