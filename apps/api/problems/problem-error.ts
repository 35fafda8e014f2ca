import type { Problem } from '#domain/problem.js';
import type { ProblemCode } from './problem-table.js';

export interface ProblemExtras {
  readonly currentVersion?: number;
  readonly problems?: readonly Problem[];
  readonly versions?: { readonly base: unknown; readonly current: unknown };
}

/** Thrown by a controller to answer with a problem; the filter turns it into the reply. */
export class ProblemError extends Error {
  constructor(
    readonly code: ProblemCode,
    readonly detail: string,
    readonly extras: ProblemExtras = {},
  ) {
    super(detail);
    this.name = 'ProblemError';
  }
}
