import { planOverview } from '#explain/overview/compute-overview.js';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import type { JsonDocument } from '#planning/json-document.js';
import type { PlanOverview as OverviewPort } from '#planning/ports/plan-overview.js';
import { campusOf } from './campus-document.js';
import { savedPlan } from './saved-plan.js';

/** Works out the overview of a plan document. */
export const computedOverview: OverviewPort = {
  of(campusDocument, planDocument) {
    const campus = campusOf(campusDocument);
    const { plan, report } = savedPlan(planDocument, campus);
    return Promise.resolve(asDocument(planOverview(campus, plan, report)));
  },
};

/** Plain JSON, as it will be stored. */
function asDocument(overview: PlanOverview): JsonDocument {
  return JSON.parse(JSON.stringify(overview)) as JsonDocument;
}

/** The lines that a person reads first. The overview was written by `computedOverview`. */
export function headlineLines(overview: JsonDocument): readonly string[] {
  const { firstLimit, nextSite, promise } = overview['headline'] as PlanOverview['headline'];
  return [nextSite, firstLimit, promise];
}
