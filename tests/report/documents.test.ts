/**
 * Every document of the demo: that nothing keeps it from being printed, that it answers its reader's
 * questions, and what it must never say.
 */
import { describe, expect, test } from 'vitest';
import { documentOf, usualDocuments } from '#planning/documents/plan-documents.js';
import type { DocumentKind } from '#planning/ports/document-writer.js';
import { documentProblems } from '#report/document/document-problems.js';
import { documentText } from '#report/document/document-text.js';
import type { PlanDocument } from '#report/document/plan-document.js';
import { smallCampus, planOf } from '../support/small-campus.js';
import { demoSource, sourceOf } from '../support/plan-source.js';

const EDITION = { planVersion: 'a1b2c3d4', createdAt: '2026-11-25' };
const source = demoSource('strained');
const wishes = usualDocuments(source);

function made(kind: DocumentKind): PlanDocument {
  const wish = wishes.find((one) => one.kind === kind);
  if (!wish) throw new Error(`the demo has no ${kind}`);
  return documentOf(source, wish, EDITION);
}

const spoken = (kind: DocumentKind) => documentText(made(kind));

describe.each(wishes)('$kind $site', (wish) => {
  const document = documentOf(source, wish, EDITION);

  test('has nothing that keeps it from being printed', () => {
    expect(documentProblems(document)).toEqual([]);
  });

  test('carries the marks that every page shows', () => {
    expect(document).toMatchObject({
      program: source.campus.program,
      planVersion: 'a1b2c3d4',
      dataDate: 'November 25, 2026',
      status: 'draft',
      solveNote: source.overview.solve.sentence,
    });
  });

  test('says no number of one in the plural, and nothing that is no word', () => {
    const text = documentText(document);
    expect(text).not.toMatch(
      /(?<![\d,.])1 (sites|hours|years|gates|loads|leaders|people|times|cubic yards)\b/,
    );
    expect(text).not.toMatch(/undefined|NaN|Infinity|\[object|null/);
    expect(text).not.toMatch(/\$-|\.\d{5,}/);
  });
});

test('the long-range plan lists every site, every promise with its document, and every assumption’s source', () => {
  const text = spoken('long-range-plan');
  const { candidates, existing, commitments, buildTypes, pools } = source.campus;
  for (const { id, name } of [...candidates, ...existing]) {
    expect(text).toContain(id);
    expect(text).toContain(name);
  }
  for (const { name, document } of commitments) {
    expect(text).toContain(name);
    expect(text).toContain(document);
  }
  for (const { provenance } of [...buildTypes, ...pools]) expect(text).toContain(provenance.source);
  expect(text).toMatch(/class 5/i);
  expect(text).toContain('was not sampled');
});

test('the prospectus promises nothing, holds no laboratory value and names nobody', () => {
  const text = spoken('donor-prospectus');
  expect(text).toContain('Planned for planting in');
  expect(text).toContain('subject to approvals');
  expect(text).not.toMatch(/\bwill\b/i);
  expect(text).not.toMatch(/mg\/kg|\blead\b|\bpH\b/);
  const people = source.campus.candidates.flatMap(({ evidence }) =>
    evidence.map(({ observer }) => observer),
  );
  for (const person of people) expect(text).not.toContain(person);
  for (const { name } of source.campus.funds) expect(text).not.toContain(name);
});

test('the staffing request sets ways to do less beside the plan, and asks to be signed', () => {
  const { blocks } = made('staffing-request');
  const options = blocks.find((b) => b.kind === 'table' && b.caption.startsWith('Options'));
  expect(options).toMatchObject({ kind: 'table' });
  if (options?.kind !== 'table') return;
  expect(options.columns.length).toBeGreaterThanOrEqual(3);
  expect(new Set(options.columns.slice(1).map(({ weight }) => weight)).size).toBe(1);
  expect(blocks.at(-1)).toMatchObject({ kind: 'signatures' });
  const [first] = source.overview.hires;
  if (first) expect(spoken('staffing-request')).toContain(first.askBy);
});

test('the calendar and the order hold digging back until the ground is marked', () => {
  expect(spoken('work-calendar')).toContain('until its ticket is written here');
  expect(spoken('work-calendar')).toContain('30 minutes after the last thunder');
  expect(spoken('materials-order')).toContain('the campus locator');
});

test('every document with dollars says what class of estimate they are', () => {
  for (const { kind } of wishes) {
    if (spoken(kind).includes('$')) expect(spoken(kind), kind).toMatch(/class 5/i);
  }
  expect(spoken('materials-order')).toContain('$');
});

test('a dossier of food ground tells of water, poison and thorns, a brief does not', () => {
  const [site] = wishes.filter(({ kind }) => kind === 'site-dossier');
  const dossier = documentText(documentOf(source, site!, EDITION));
  for (const words of ['backflow', 'rain-tank', 'poisonous', 'thorns', 'chips stay from buildings'])
    expect(dossier).toContain(words);
  expect(spoken('administration-brief')).not.toContain('backflow');
});

test('the annual report takes nothing that is not recorded as zero', () => {
  const tables = made('annual-report').blocks.filter((block) => block.kind === 'table');
  const happened = tables[0]!.rows.map(({ cells }) => cells.at(-1));
  expect(happened.length).toBeGreaterThan(5);
  for (const cell of happened) expect(cell).toEqual([{ text: 'not recorded', bold: true }]);
});

test('a plan that prepares nothing has documents that say so', () => {
  const campus = smallCampus();
  const idle = sourceOf(campus, planOf(campus, []));
  const kinds = usualDocuments(idle).map(({ kind }) => kind);
  expect(kinds).not.toContain('site-dossier');
  expect(kinds).not.toContain('donor-prospectus');
  for (const kind of kinds) {
    const document = documentOf(idle, { kind }, EDITION);
    expect(documentProblems(document), kind).toEqual([]);
  }
  const order = documentText(documentOf(idle, { kind: 'materials-order' }, EDITION));
  expect(order).toContain('prepares no site');
});
