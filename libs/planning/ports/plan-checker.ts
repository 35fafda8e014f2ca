import type { JsonDocument } from '../json-document.js';
import type { PlanningProblem } from '../problem.js';

export interface PlanVerdict {
  readonly verified: boolean;
  /** Empty when verified. */
  readonly breaches: readonly PlanningProblem[];
}

/** Recomputes a plan from the campus document alone, in exact arithmetic, by the rules' checks. */
export interface PlanChecker {
  check(campus: JsonDocument, plan: JsonDocument): Promise<PlanVerdict>;
}
