import type { Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import type { SolveReport } from '#domain/tier.js';
import { planOverview } from '#explain/overview/compute-overview.js';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import type { JsonDocument } from './json-document.js';

/** The overview of a plan as plain JSON, in the form in which it is kept. */
export function overviewDocument(campus: Campus, plan: Plan, report: SolveReport): JsonDocument {
  return JSON.parse(JSON.stringify(planOverview(campus, plan, report))) as JsonDocument;
}

/** Reads an overview back. Only `overviewDocument` makes one, so its form is known. */
export function overviewOf(document: JsonDocument): PlanOverview {
  return document as unknown as PlanOverview;
}
