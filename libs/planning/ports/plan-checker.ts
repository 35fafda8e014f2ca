import type { JsonDocument } from '../json-document.js';
import type { Breach } from '#domain/breach.js';

export interface PlanVerdict {
  readonly verified: boolean;
  /** Empty when verified. */
  readonly breaches: readonly Breach[];
}

/** Recomputes a plan from the campus document alone, in exact arithmetic, by the rules' checks. */
export interface PlanChecker {
  check(campus: JsonDocument, plan: JsonDocument): Promise<PlanVerdict>;
}
