import type { JsonDocument } from '../json-document.js';

/** Computes what the page shows of a plan: headline, timeline, season care, reasons. */
export interface PlanOverview {
  of(campus: JsonDocument, plan: JsonDocument): Promise<JsonDocument>;
}
