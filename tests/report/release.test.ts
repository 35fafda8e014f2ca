/** What keeps a document from being called final, and that it is said which. */
import { expect, test } from 'vitest';
import { documentOf } from '#planning/documents/plan-documents.js';
import { refusals } from '#planning/documents/release-check.js';
import { paragraph } from '#report/document/text-blocks.js';
import { RELEASE_NEEDS } from '#report/release/release-needs.js';
import { releaseProblems } from '#report/release/release-problems.js';
import { planOf, smallCampus } from '../support/small-campus.js';
import { sourceOf } from '../support/plan-source.js';

const campus = smallCampus();
const source = sourceOf(campus, planOf(campus, [['S-2', 'pollinator', 2028]]));
const DRAFT = { planVersion: 'a1', createdAt: '2026-11-20' };
const FINAL = { ...DRAFT, approvedBy: 'Pat Rowan' };
const request = documentOf(source, { kind: 'staffing-request' }, FINAL);
const needs = RELEASE_NEEDS['staffing-request'];
const by = { approvedBy: 'Pat Rowan', sites: [] };

test('a whole document with the name of who approved it may be final, and bears the name', () => {
  expect(refusals(source, [{ kind: 'staffing-request' }], FINAL)).toEqual([]);
  expect(request).toMatchObject({ status: 'approved', approvedBy: 'Pat Rowan' });
});

test('without a name it is refused', () => {
  const [refusal] = refusals(source, [{ kind: 'staffing-request' }], DRAFT);
  expect(refusal).toMatchObject({
    document: 'Grounds staffing request',
    problems: [{ missing: 'approval', remedy: 'Name the person with --approved-by.' }],
  });
});

test.each([
  ['caution', 'callout'],
  ['figure', 'figure'],
  ['approval', 'signatures'],
] as const)('a missing %s is named', (missing, kind) => {
  const blocks = request.blocks.filter(
    (block) => block.kind !== kind || (block.kind === 'callout' && block.tone !== 'caution'),
  );
  expect(blocks.length).toBeLessThan(request.blocks.length);
  expect(releaseProblems({ ...request, blocks }, needs, by)).toMatchObject([{ missing }]);
});

test('a gate that is not passed holds back the dossier, the order and the calendar, not the request', () => {
  const gated = smallCampus((file) => {
    const site = file.candidateSites.find(({ id }) => id === 'S-2') as Record<string, unknown>;
    site['gates'] = [
      {
        kind: 'utilities',
        status: 'unknown',
        note: 'A gas main is near.',
        bars: 'all',
        clearedBy: 'The campus locator.',
        plannedClearFrom: 'FY2028',
      },
    ];
  });
  const held = sourceOf(gated, planOf(gated, [['S-2', 'pollinator', 2028]]));
  const wishes = [
    { kind: 'site-dossier', site: 'S-2' },
    { kind: 'materials-order' },
    { kind: 'work-calendar' },
    { kind: 'staffing-request' },
  ] as const;
  const found = refusals(held, wishes, FINAL);
  expect(found.map(({ document }) => document)).toEqual([
    'Site dossier, S-2',
    'Materials order',
    'Work calendar',
  ]);
  expect(found[0]!.problems[0]).toEqual({
    missing: 'approval',
    problem: 'S-2, utilities: not passed. A gas main is near.',
    remedy: 'The campus locator.',
  });
});

test('a prospectus that says “will” is refused with the sentence', () => {
  const blocks = [paragraph('The bed will be there.'), ...request.blocks];
  const giver = { ...needs, readers: 'givers' } as const;
  expect(releaseProblems({ ...request, blocks }, giver, by)).toMatchObject([
    { missing: 'wording', problem: 'It promises with the word “will”: “The bed will be there.”' },
  ]);
});

test('an annual report is not final while what happened is not on record', () => {
  const [refusal] = refusals(source, [{ kind: 'annual-report' }], FINAL);
  expect(refusal?.problems.map(({ missing }) => missing)).toEqual(['record']);
});
