import { expect, test } from 'vitest';
import { paragraph } from '#report/document/text-blocks.js';
import { renderPdf } from '#report-pdf/render-pdf.js';
import { rawPdf } from '../support/pdf/raw-objects.js';
import { documentOf, sampleBlocks } from '../support/sample-document.js';
import { sampleFigures } from '../support/sample-figures.js';

const fileId = async (bytes: Uint8Array) =>
  (await rawPdf(bytes)).file.context.trailerInfo.ID?.toString();

test('the same document gives the same bytes, at any time of day', async () => {
  const document = documentOf([...sampleBlocks, ...sampleFigures]);
  const first = await renderPdf(document);
  await new Promise((resolve) => setTimeout(resolve, 1100));
  expect(Buffer.from(await renderPdf(structuredClone(document))).equals(first)).toBe(true);
});

test('two files made at once do not mix', async () => {
  const one = documentOf([paragraph('One')]);
  const two = documentOf([paragraph('Two')]);
  const alone = [await renderPdf(one), await renderPdf(two)];
  expect(await Promise.all([renderPdf(one), renderPdf(two)])).toEqual(alone);
});

test('another word gives another file identifier', async () => {
  const ids = await Promise.all(
    ['One', 'Two'].map(async (word) => fileId(await renderPdf(documentOf([paragraph(word)])))),
  );
  expect(ids[0]).toMatch(/^\[ <[0-9a-f]{32}> <[0-9a-f]{32}> \]$/);
  expect(ids[1]).not.toBe(ids[0]);
});

test('a document with problems is refused, with each of them named', async () => {
  const document = documentOf([paragraph(' ')], { title: '' });
  await expect(renderPdf(document)).rejects.toThrow(/title is empty; a paragraph has no text/);
});
