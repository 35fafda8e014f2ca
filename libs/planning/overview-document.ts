import type { Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import type { SolveReport } from '#domain/tier.js';
import { planOverview } from '#explain/overview/compute-overview.js';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import type { JsonDocument } from './json-document.js';

/**
 * One more whenever `PlanOverview` changes, which a test holds: an overview that was kept in another
 * form is worked out anew from its plan.
 */
export const OVERVIEW_FORM = 2;

/** The overview of a plan as plain JSON, in the form in which it is kept. */
export function overviewDocument(campus: Campus, plan: Plan, report: SolveReport): JsonDocument {
  const overview = { form: OVERVIEW_FORM, ...planOverview(campus, plan, report) };
  return JSON.parse(JSON.stringify(overview)) as JsonDocument;
}

export function isOfThisForm(document: JsonDocument): boolean {
  return document['form'] === OVERVIEW_FORM;
}

/** Reads an overview of this form. Only `overviewDocument` makes one. */
export function overviewOf(document: JsonDocument): PlanOverview {
  return document as unknown as PlanOverview;
}
