import type { JsonDocument } from '#planning/json-document.js';
import { overviewDocument, overviewOf } from '#planning/overview-document.js';
import type { PlanOverview } from '#planning/ports/plan-overview.js';
import { campusOf } from './campus-document.js';
import { savedPlan } from './saved-plan.js';

/** Works out the overview of a plan document. */
export const computedOverview: PlanOverview = {
  async of(campusDocument, planDocument) {
    const { campus, plan, report } = savedPlan(planDocument, campusOf(campusDocument));
    return overviewDocument(campus, plan, report);
  },
};

/** The lines of an overview that a person reads first. */
export function headlineLines(overview: JsonDocument): readonly string[] {
  const { firstLimit, nextSite, promise } = overviewOf(overview).headline;
  return [nextSite, firstLimit, promise];
}
