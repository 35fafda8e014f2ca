import type { Problem } from '#domain/problem.js';
import type { CampusSummary } from '#planning/ports/campus-store.js';
import type { SaveOutcome } from '#planning/use-cases/save-campus.js';
import { ProblemError } from '../problems/problem-error.js';

type Saved = Extract<SaveOutcome, { kind: 'saved' }>;

/** The saved campus, or the problem that kept it from being saved. */
export function savedOrProblem(outcome: SaveOutcome): Saved {
  switch (outcome.kind) {
    case 'saved':
      return outcome;
    case 'refused':
      throw new ProblemError('campus-refused', countOf(outcome.problems), {
        problems: outcome.problems,
      });
    case 'unknown-campus':
      throw unknownCampus();
    case 'version-conflict':
      throw new ProblemError('version-conflict', `It is at version ${outcome.current} by now.`, {
        currentVersion: outcome.current,
      });
  }
}

export function unknownCampus(): ProblemError {
  return new ProblemError('unknown-campus', 'GET /api/campuses lists those that there are.');
}

export function campusAddress({ id }: Pick<CampusSummary, 'id'>): string {
  return `/api/campuses/${id}`;
}

/** How many errors were found; what is only to be looked at keeps nothing from being saved. */
export function countOf(problems: readonly Pick<Problem, 'severity'>[]): string {
  const errors = problems.filter(({ severity }) => severity === 'error').length;
  return errors === 1 ? 'One error was found.' : `${errors} errors were found.`;
}
