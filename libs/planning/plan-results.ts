import type { Campus } from '#domain/campus.js';
import { leadingTier, type SolveReport, type TierResult } from '#domain/tier.js';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { solveSentence } from '#explain/overview/solve-sentence.js';
import { administrationBrief } from '#report/administration-brief/administration-brief.js';
import type { PlanDocument } from '#report/document/plan-document.js';
import type { DocumentKind } from './ports/document-writer.js';

/** One sentence on how near to proven a plan is. */
export function provenSentence(campus: Campus, report: SolveReport): string {
  return solveSentence(campus, report);
}

/** The tier that a solve is measured by: the first not proven, else benefit. */
export function measuredTier({ tiers }: SolveReport): TierResult | undefined {
  return leadingTier(tiers);
}

export interface DocumentContext {
  /** Short digest of the plan. */
  readonly planVersion: string;
  /** ISO date that the document bears; the same plan and date give the same bytes. */
  readonly createdAt: string;
}

/** The model of one document of a plan. */
export function documentOf(
  kind: DocumentKind,
  overview: PlanOverview,
  context: DocumentContext,
): PlanDocument {
  switch (kind) {
    case 'administration-brief':
      return administrationBrief(overview, context);
  }
}
