import type { Problem } from '#domain/problem.js';
import { ProblemError } from './problem-error.js';

/** The part of the Standard Schema's issue that we use. */
interface Issue {
  readonly message: string;
  readonly path?: readonly (PropertyKey | { readonly key: PropertyKey })[] | undefined;
}

/** Told of a body, query or address that does not fit its schema: every issue at once. */
export function requestInvalid(issues: readonly Issue[]): ProblemError {
  const problems = issues.map(problemOfIssue);
  const fields = problems.map(({ field }) => field || 'the whole').join(', ');
  return new ProblemError('request-invalid', `Not as documented: ${fields}.`, { problems });
}

function problemOfIssue({ message, path = [] }: Issue): Problem {
  const keys = path.map((part) => String(typeof part === 'object' ? part.key : part));
  return {
    code: 'REQUEST-FIELD',
    record: 'request',
    field: keys.join('.'),
    value: null,
    problem: message,
    remedy: 'See /api/openapi.json for what is expected.',
    severity: 'error',
  };
}
