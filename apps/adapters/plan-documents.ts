import { digestOf } from '#contracts/canonical.js';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { overviewOf } from '#planning/overview-document.js';
import { documentOf } from '#planning/plan-results.js';
import type {
  DocumentKind,
  DocumentWriter,
  WrittenDocument,
} from '#planning/ports/document-writer.js';
import { renderPdf } from '#report-pdf/render-pdf.js';

/** Letters of a plan's digest that a document shows. */
const SHORT_DIGEST = 8;

/** Draws one document of a plan. It bears the date of the campus data, so equal plans give equal bytes. */
export async function drawDocument(
  kind: DocumentKind,
  plan: unknown,
  overview: PlanOverview,
): Promise<WrittenDocument> {
  const planVersion = digestOf(plan).replace('sha-256:', '').slice(0, SHORT_DIGEST);
  const createdAt = overview.campus.dataDate;
  const bytes = await renderPdf(documentOf(kind, overview, { planVersion, createdAt }));
  return { kind, fileName: `${kind}.pdf`, mediaType: 'application/pdf', bytes };
}

/** Answers the documents port. */
export const documentWriter: DocumentWriter = {
  write: ({ kind, plan, overview }) => drawDocument(kind, plan, overviewOf(overview)),
};
