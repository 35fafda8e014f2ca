/** A site in two halves that is returned to lawn later: every document that tells of the site says both. */
import { describe, expect, test } from 'vitest';
import type { Campus } from '#domain/campus.js';
import type { LaterChange } from '#domain/later-change.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import { completePlan } from '#optimizer/allocate/complete-plan.js';
import { documentOf, usualDocuments } from '#planning/documents/plan-documents.js';
import { documentProblems } from '#report/document/document-problems.js';
import { documentText } from '#report/document/document-text.js';
import { cents } from '#units/cents.js';
import { fiscalYear } from '#units/fiscal-year.js';
import { smallCampus } from '../support/small-campus.js';
import { sourceOf } from '../support/plan-source.js';

const small = smallCampus();
const toLawn: LaterChange = {
  id: 'to-lawn',
  name: 'Returned to lawn',
  from: 'any',
  ages: [5],
  costPerSqFt: cents(30),
  hoursPer1000SqFt: 2,
  provenance: { basis: 'judgement', source: 'Made up for this test.' },
};
const campus: Campus = { ...small, laterChanges: [toLawn] };
const decisions = {
  placements: [
    {
      ...{ site: 'S-1', buildType: 'edible', year: fiscalYear(2028) },
      ...{ secondHalf: fiscalYear(2030), change: { id: 'to-lawn', age: 5 } },
    },
  ],
  ...{ hires: [], workDays: [], purchases: [] },
} as const;
const { plan } = completePlan(campus, decisions, campusCharges(campus));
const source = sourceOf(campus, plan);
const wishes = usualDocuments(source);
const said = (kind: string) => {
  const wish = wishes.find((one) => one.kind === kind)!;
  const edition = { planVersion: 'a1b2c3d4', createdAt: '2026-11-25' };
  const document = documentOf(source, wish, edition);
  expect(documentProblems(document)).toEqual([]);
  return documentText(document);
};

describe('a site in halves that is returned to lawn later', () => {
  test('has every kind of document', () => {
    expect(wishes.map(({ kind }) => kind).filter((kind) => said(kind) === '')).toEqual([]);
  });

  test.each(['administration-brief', 'long-range-plan', 'site-dossier'])(
    '%s tells both',
    (kind) => {
      expect(said(kind)).toMatch(/second half .*FY30/);
      expect(said(kind)).toContain('At the age of 5 years: Returned to lawn.');
    },
  );

  test('a giver is told when the second half is planted, and what is planned later', () => {
    const text = said('donor-prospectus');
    expect(text).toMatch(/Planned for planting in spring 2028, its second half spring 2030/);
    expect(text).toContain('What is planned later. At the age of 5 years: Returned to lawn.');
  });

  test.each(['materials-order', 'work-calendar', 'annual-report'])(
    '%s is about the first half alone',
    (kind) => {
      expect(said(kind)).toContain(', first half');
      expect(said(kind)).not.toContain('second half');
    },
  );
});
