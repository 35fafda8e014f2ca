import type { ReactNode } from 'react';
import type { Problem } from '../api.js';
import { strings } from '../strings.data.js';

/** Each problem with where it is, what was found there, and what to do. */
export function ProblemList({ problems }: { readonly problems: readonly Problem[] }): ReactNode {
  if (problems.length === 0) return null;
  return (
    <ul className="problems">
      {problems.map((problem) => (
        <li key={`${problem.record} ${problem.field} ${problem.code} ${problem.problem}`}>
          <strong>
            {strings.problems[problem.severity]}: {placeOf(problem)}.
          </strong>{' '}
          {problem.problem} {found(problem.value)} {problem.remedy}
        </li>
      ))}
    </ul>
  );
}

function placeOf({ record, field }: Problem): string {
  return field === '' ? record : `${record}, ${field}`;
}

function found(value: unknown): string {
  if (typeof value === 'string' && value.length <= 60) return strings.problems.found(value);
  if (typeof value === 'number') return strings.problems.found(String(value));
  return '';
}
