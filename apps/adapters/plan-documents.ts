import { digestOf } from '#contracts/canonical.js';
import { documentSource, type DocumentSource } from '#planning/documents/document-source.js';
import { planAnswers } from '#planning/documents/plan-answers.js';
import {
  documentOf,
  fileNameOf,
  titleOf,
  usualDocuments,
  wishOf,
} from '#planning/documents/plan-documents.js';
import { overviewOf } from '#planning/overview-document.js';
import type {
  DocumentWish,
  DocumentWriter,
  PlanJson,
  WrittenDocument,
} from '#planning/ports/document-writer.js';
import type { Edition } from '#report/document/edition.js';
import { renderPdf } from '#report-pdf/render-pdf.js';
import { campusOf } from './campus-document.js';
import { savedPlan } from './saved-plan.js';

/** Letters of a plan's digest that a document shows. */
const SHORT_DIGEST = 8;

/** The marks of a draft. It bears the date of the campus data, so equal plans give equal bytes. */
export function editionOf(planFile: unknown, { campus }: DocumentSource): Edition {
  return {
    planVersion: digestOf(planFile).replace('sha-256:', '').slice(0, SHORT_DIGEST),
    createdAt: campus.dataDate,
  };
}

/** Draws one document of a plan. */
export async function drawDocument(
  source: DocumentSource,
  wish: DocumentWish,
  edition: Edition,
): Promise<WrittenDocument> {
  const bytes = await renderPdf(documentOf(source, wish, edition));
  return { kind: wish.kind, fileName: fileNameOf(wish), mediaType: 'application/pdf', bytes };
}

/** Answers the documents port. */
export const documentWriter: DocumentWriter = {
  list(plan) {
    const wishes = usualDocuments(sourceOf(plan));
    return Promise.resolve(
      wishes.map((wish) => ({ ...wish, title: titleOf(wish), fileName: fileNameOf(wish) })),
    );
  },
  async write(plan, fileName, paper) {
    const source = sourceOf(plan);
    const wish = wishOf(source, fileName);
    return wish && drawDocument(source, wish, { ...editionOf(plan.plan, source), paper });
  },
};

function sourceOf({ campus: campusDocument, plan, overview, answers }: PlanJson): DocumentSource {
  const saved = savedPlan(plan, campusOf(campusDocument));
  return documentSource({
    ...{ campus: saved.campus, plan: saved.plan },
    overview: overviewOf(overview),
    answers: planAnswers(answers),
  });
}
