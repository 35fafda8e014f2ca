/**
 * Documents of campuses at their limits, read back with a library that did not write them: 120 sites
 * over 50 years with the longest names, and one year with no gift.
 */
import { expect, test } from 'vitest';
import { documentProblems } from '#report/document/document-problems.js';
import { documentOf, usualDocuments } from '#planning/documents/plan-documents.js';
import { renderPdf } from '#report-pdf/render-pdf.js';
import { expectTidy } from '../support/pdf/tidy.js';
import { allElements, readPdf } from '../support/pdf-reading.js';
import { constructedSource } from '../support/plan-source.js';
import { stressFile } from '../support/stress-campus.js';

const EDITION = { planVersion: 'a1b2c3d4', createdAt: '2026-11-25', paper: 'a4' } as const;
const A4_SIDE = 63.6;

test('nothing of a long-range plan of 120 sites and 50 years is clipped or overlapped', async () => {
  const source = constructedSource(stressFile({ sites: 120, years: 50, gifts: 'some' }));
  const pdf = await readPdf(
    await renderPdf(documentOf(source, { kind: 'long-range-plan' }, EDITION)),
  );
  expectTidy(pdf, A4_SIDE);
  expect(allElements(pdf, 'Figure')).toHaveLength(2);
}, 240_000); // Some seconds alone; minutes where many other programs run.

test('every document of a campus without any money is written', () => {
  const file = stressFile({ sites: 3, years: 1, gifts: 'none' });
  const funds = file.funds.map(({ yearlyInflows: _, ...fund }) => ({
    ...fund,
    openingBalanceDollars: 0,
    floorDollars: 0,
    inflows: [],
  }));
  const free = { existingSites: [], standingCosts: [], commitments: [] };
  const source = constructedSource({ ...file, ...free, funds });
  for (const wish of usualDocuments(source)) {
    expect(documentProblems(documentOf(source, wish, EDITION))).toEqual([]);
  }
});

test('a brief stays one where dozens of sites are prepared in one year, with the longest names', async () => {
  const source = constructedSource(stressFile({ sites: 120, years: 1, gifts: 'none' }));
  const count = source.overview.next.sites.length;
  expect(count).toBeGreaterThan(20);
  const pdf = await readPdf(
    await renderPdf(documentOf(source, { kind: 'administration-brief' }, EDITION)),
  );
  expectTidy(pdf, A4_SIDE);
  expect(pdf.pages.length).toBeLessThanOrEqual(5);
  const words = pdf.pages.flatMap(({ boxes }) => boxes.map(({ text }) => text));
  const text = words.join(' ').replace(/\s+/g, ' ');
  expect(text).toContain(`and ${count - 4} more sites`);
  expect(text).toContain(`The other ${count - 6} sites of FY28 stand in the long-range plan.`);
});

test('every document of one year with no gift is tidy', async () => {
  const source = constructedSource(stressFile({ sites: 12, years: 1, gifts: 'none' }));
  for (const wish of usualDocuments(source).filter(({ kind }) => kind !== 'long-range-plan')) {
    const pdf = await readPdf(await renderPdf(documentOf(source, wish, EDITION)));
    expectTidy(pdf, A4_SIDE);
    for (const { alts } of pdf.pages) for (const alt of alts) expect(alt).not.toBe('');
  }
});
