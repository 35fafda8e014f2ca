import { anError, type Problem } from '#domain/problem.js';
import { specialText } from './issue-places.js';
import { issueText } from './issue-text.js';
import type { Issue } from './issues.js';
import { recordAndField } from './record-names.js';

/** Says in plain words what the schema found. `siblings` lists the fields that a record may have. */
export function issueProblems(
  issues: readonly Issue[],
  document: unknown,
  siblings: (path: readonly PropertyKey[]) => readonly string[],
): Problem[] {
  return issues.map((issue) => {
    const [code, text] = specialText(issue) ?? issueText(issue, siblings(issue.path.slice(0, -1)));
    const { record, field } = recordAndField(document, issue.path);
    return anError({ code, record, field, value: plain(issue.value) }, text);
  });
}

/** Records and lists are not repeated in a problem: they may be long. */
function plain(value: unknown): unknown {
  return typeof value === 'object' || value === undefined ? null : value;
}
