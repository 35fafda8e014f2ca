import type { NewPlan, PlanOrigin, PlanSummary, StoredPlan } from '#planning/ports/plan-store.js';
import type { PlanEntity } from '../entities/plan.entity.js';
import { fromText, toText } from './json-text.js';
import { limitsColumns, limitsOf } from './limits-columns.js';
import { solveEndingOf } from './solve-ending-column.js';

/** A row of `plan` without the two documents, for lists. */
export type PlanSummaryRow = Omit<PlanEntity, 'document' | 'overview'>;

export function planSummary(row: PlanSummaryRow): PlanSummary {
  const { id, campusId, campusVersion, seed, solverVersion, solvedAt } = row;
  const ending = solveEndingOf(row.ending);
  return {
    id,
    campusId,
    campusVersion,
    seed,
    solverVersion,
    solvedAt,
    ending,
    // A constraint holds the origin to these.
    origin: row.origin as PlanOrigin,
    limits: limitsOf(row),
  };
}

export function storedPlan(row: PlanEntity): StoredPlan {
  return { ...planSummary(row), plan: fromText(row.document), overview: fromText(row.overview) };
}

export function planRow({ limits, plan, overview, ...rest }: NewPlan, solvedAt: Date): PlanEntity {
  return {
    ...rest,
    ...limitsColumns(limits),
    document: toText(plan),
    overview: toText(overview),
    solvedAt,
  };
}
