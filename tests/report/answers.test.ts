import { beforeAll, describe, expect, it } from 'vitest';
import type { LimitsAnswer } from '#explain/questions/limits/answer.js';
import type { ChoiceRow, NextSiteAnswer } from '#explain/questions/next-site/answer.js';
import { futures } from '#futures/futures.js';
import { meetFutures } from '#futures/meet-futures.js';
import type { FuturesAnswer } from '#futures/results/answer.js';
import type { DocumentSource } from '#planning/documents/document-source.js';
import { newestAnswers } from '#planning/documents/plan-answers.js';
import { documentOf } from '#planning/documents/plan-documents.js';
import type { Explanation } from '#planning/ports/explanation-store.js';
import { renderPdf } from '#report-pdf/render-pdf.js';
import { documentProblems } from '#report/document/document-problems.js';
import { documentText } from '#report/document/document-text.js';
import type { Figure } from '#report/document/figure.js';
import { demoSource } from '../support/plan-source.js';

const EDITION = { planVersion: 'abcd1234', createdAt: '2026-11-25' };
const MADE = { rounds: 12, seeds: [1], skipped: [], sentence: 'Each was planned again.' };

function choice(id: string, standing: ChoiceRow['standing']): ChoiceRow {
  return {
    ...{ id, name: `${id} Lawn`, sites: [id], buildTypes: [], standing, regret: null },
    ...{ sentence: `${id} is told apart so.`, seedsWorse: 0, seedsRun: 5, firstLimit: null },
    ...{ firstLimitMovesYears: null, busySeason: 'summer', busySeasonHours: 40, cost: null },
    ...{ giftsUsed: [], giftsLost: [], openGates: [], reasons: [], against: [] },
    ...{ comparedWith: null, rounds: 60 },
  };
}

const NEXT: NextSiteAnswer = {
  ...{ question: 'next-site', year: 'FY28', headline: 'Prepare A-1 Lawn in FY28.', gap: 0.0123 },
  choices: [choice('A-1', 'recommended'), choice('B-2', 'tied'), choice('C-3', 'found-worse')],
  ...{ firstOpenYear: 'FY28', couldBecome: [], made: MADE },
};

const LIMITS: LimitsAnswer = {
  ...{ question: 'limits', headline: 'Summer hours run short first.', promise: 'One site a year' },
  ...{ ofPlan: [], ofPromise: [], together: [], made: MADE },
  annual: {
    resource: 'hours',
    label: null,
    year: null,
    sentence: '',
  } as unknown as LimitsAnswer['annual'],
};

describe('answers in documents', () => {
  let bare: DocumentSource;
  let asked: FuturesAnswer;

  beforeAll(async () => {
    bare = demoSource('strained');
    const { campus, plan } = bare;
    asked = await futures({
      ...{ campus, plan, seed: 1, futures: 6, mended: 1, onStep: () => undefined },
      runner: { parallel: 1, run: (order) => Promise.resolve(meetFutures(order)) },
    });
  });

  it('prints nothing of what was not asked', () => {
    const brief = documentText(documentOf(bare, { kind: 'administration-brief' }, EDITION));
    expect(brief).not.toContain('the committee asked');
    const plan = documentText(documentOf(bare, { kind: 'long-range-plan' }, EDITION));
    expect(plan).toContain('was not sampled for this document');
  });

  it('puts each answer in the brief with how sure it is, near ties by name, in the same bytes', async () => {
    const source = { ...bare, answers: { nextSite: NEXT, limits: LIMITS, futures: asked } };
    const brief = documentOf(source, { kind: 'administration-brief' }, EDITION);
    expect(documentProblems(brief)).toEqual([]);
    const text = documentText(brief);
    for (const part of [
      'Asked of this plan, on campus data of November 25, 2026',
      'Prepare A-1 Lawn in FY28.',
      'a gap of 1.2%',
      'B-2 Lawn: cannot be told apart from it.',
      'Found with every seed, not proven.',
      'Summer hours run short first.',
      asked.headline,
    ]) {
      expect(text).toContain(part);
    }
    expect(text).not.toContain('What would more buy?');
    const [first, second] = [await renderPdf(brief), await renderPdf(brief)];
    expect(Buffer.compare(Buffer.from(first), Buffer.from(second))).toBe(0);
  });

  it('draws the futures in the long-range plan, every value in the table', () => {
    const source = { ...bare, answers: { futures: asked } };
    const plan = documentOf(source, { kind: 'long-range-plan' }, EDITION);
    expect(documentProblems(plan)).toEqual([]);
    expect(documentText(plan)).not.toContain('was not sampled');
    const figure = plan.blocks.find(
      (b): b is Figure => b.kind === 'figure' && b.title.includes('sampled futures'),
    );
    const summers = asked.fixed.seasons.filter(({ season }) => season === 'summer');
    expect(figure?.table.rows).toHaveLength(summers.length);
    const bars = figure?.drawing.shapes.filter((s) => s.kind === 'rect' && s.fill === 'diagonal');
    // One for each summer, and one in the legend.
    expect(bars).toHaveLength(summers.length + 1);
  });

  it('takes the newest answer that is there of each kind', () => {
    const of = (kind: string, n: number, state: Explanation['state'] = 'done') =>
      ({
        question: { kind },
        state,
        answer: state === 'done' ? { n } : null,
      }) as unknown as Explanation;
    const found = newestAnswers([
      of('futures', 3, 'working'),
      of('futures', 2),
      of('limits', 5),
      of('futures', 1),
    ]);
    expect(found).toEqual({ futures: { n: 2 }, limits: { n: 5 } });
  });
});
