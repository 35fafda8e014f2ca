/** An overview is kept with the form it has; what was kept in another is worked out anew. */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { OVERVIEW_FORM, overviewDocument, isOfThisForm } from '#planning/overview-document.js';
import { overviewOf, USUAL } from '../support/overview-cases.js';

const FILES = ['libs/explain/overview/plan-overview.ts', 'libs/explain/overview/reason.ts'];

/** Digest of each form's types, without their comments and line breaks. */
const DIGESTS: Readonly<Record<number, string>> = {
  1: 'a8bb8a21b6680877',
  2: 'e5f8b336f5a59a87',
};

function printed(file: string): string {
  const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest);
  return ts.createPrinter({ removeComments: true }).printFile(source).replace(/\s+/g, ' ');
}

test('whoever changes the type of an overview counts its form one further, and notes its digest here', () => {
  const digest = createHash('sha256').update(FILES.map(printed).join('')).digest('hex');
  expect(DIGESTS[OVERVIEW_FORM]).toBe(digest.slice(0, 16));
});

test('an overview of this form is known by it, and one without a form is none of it', () => {
  const { campus, plan } = overviewOf(USUAL);
  const document = overviewDocument(campus, plan, { ending: 'proven', tiers: [], conflict: [] });
  expect(isOfThisForm(document)).toBe(true);
  const { form, ...earlier } = document;
  expect(form).toBe(OVERVIEW_FORM);
  expect(isOfThisForm(earlier)).toBe(false);
});
