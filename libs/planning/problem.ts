/** Something a person can cause and put right. Data, never thrown. */
export interface PlanningProblem {
  /** Stable and machine readable, for example `solver-lost` or a campus file's own code. */
  readonly code: string;
  /** The record at fault, for example `TVU-14`; null when the problem belongs to no record. */
  readonly record: string | null;
  /** The field at fault, for example `site.statedAreaSf`; null when it belongs to no field. */
  readonly field: string | null;
  /** The value found there; null when there is none to show. */
  readonly value: unknown;
  /** What is wrong, in one sentence. */
  readonly problem: string;
  /** What to do about it, in one sentence. */
  readonly remedy: string;
  /** An error stops the work; a warning does not. */
  readonly severity: 'error' | 'warning';
}

/** The usual case outside a campus file: an error that belongs to no record or field. */
export function plainProblem(code: string, problem: string, remedy: string): PlanningProblem {
  return { code, record: null, field: null, value: null, problem, remedy, severity: 'error' };
}
