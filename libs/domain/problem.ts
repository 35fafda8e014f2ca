/**
 * Something in a file that a person can put right. Data, never thrown.
 *
 * An error is a contradiction or an impossible value: nothing is planned from the file. A warning is
 * what may be so in the world and yet deserves a look: the file is used, and says so.
 */
export interface Problem {
  /** Stable and machine readable, for example `SITE-AREA-MISMATCH`. */
  readonly code: string;
  /** The record as a reader would name it, for example `site TVU-14`. */
  readonly record: string;
  /** Path of the field within the record; empty where the whole record is meant. */
  readonly field: string;
  /** The value found there; null where there is none. */
  readonly value: unknown;
  /** What is wrong, in one sentence. */
  readonly problem: string;
  /** What to do about it, in one sentence. */
  readonly remedy: string;
  readonly severity: 'error' | 'warning';
}

/** Where a problem lies. */
export type ProblemPlace = Pick<Problem, 'code' | 'record' | 'field'> & {
  readonly value?: unknown;
};

/** What is wrong and what to do, a sentence each. */
export type ProblemText = readonly [problem: string, remedy: string];

export function anError(place: ProblemPlace, [problem, remedy]: ProblemText): Problem {
  return { value: null, ...place, problem, remedy, severity: 'error' };
}

export function aWarning(place: ProblemPlace, [problem, remedy]: ProblemText): Problem {
  return { value: null, ...place, problem, remedy, severity: 'warning' };
}

export function hasErrors(problems: readonly Problem[]): boolean {
  return problems.some((p) => p.severity === 'error');
}
