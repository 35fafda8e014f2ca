/** An overview is kept with the form it has; what was kept in another is worked out anew. */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { OVERVIEW_FORM, overviewDocument, isOfThisForm } from '#planning/overview-document.js';
import { overviewOf, USUAL } from '../support/overview-cases.js';

const FILE = 'libs/explain/overview/plan-overview.ts';

/** Digest of each form's type, without its comments and its line breaks. */
const DIGESTS: Readonly<Record<number, string>> = { 1: 'a8bb8a21b6680877' };

test('whoever changes the type of an overview counts its form one further, and notes its digest here', () => {
  const source = ts.createSourceFile(FILE, readFileSync(FILE, 'utf8'), ts.ScriptTarget.Latest);
  const printed = ts.createPrinter({ removeComments: true }).printFile(source);
  const digest = createHash('sha256').update(printed.replace(/\s+/g, ' ')).digest('hex');
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
