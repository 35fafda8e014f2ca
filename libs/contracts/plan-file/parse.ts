import { anError, type Problem } from '#domain/problem.js';
import { digestOf } from '../canonical.js';
import { PLAN_FILE_FORMAT, planFileSchema, type PlanFile } from '../plan-file.schema.js';
import { fieldNames } from '../reading/field-names.js';
import { issueProblems } from '../reading/issue-problems.js';
import { issuesOf } from '../reading/issues.js';
import { readJsonText } from '../reading/json-text.js';
import { isRecord, THE_FILE } from '../reading/record-names.js';

export type PlanParse =
  | { readonly ok: true; readonly file: PlanFile }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Reads a plan file, as text or parsed already, and reports every problem of its form at once. */
export function parsePlanFile(input: unknown): PlanParse {
  if (typeof input !== 'string') return parseDocument(input);
  const reading = readJsonText(input);
  if (!reading.ok || reading.problems.length > 0) return { ok: false, problems: reading.problems };
  return parseDocument(reading.value);
}

function parseDocument(document: unknown): PlanParse {
  if (!isRecord(document) || document.format !== PLAN_FILE_FORMAT) {
    const place = { code: 'FILE-FORMAT', record: THE_FILE, field: 'format' };
    const remedy = `A plan file says "format": "${PLAN_FILE_FORMAT}".`;
    return { ok: false, problems: [anError(place, ['This is not a plan file.', remedy])] };
  }
  const parsed = planFileSchema.safeParse(document);
  if (parsed.success) return { ok: true, file: parsed.data };
  const issues = issuesOf(parsed.error, document);
  const named = (path: readonly PropertyKey[]) => fieldNames(planFileSchema, path);
  return { ok: false, problems: issueProblems(issues, document, named) };
}

/** Says where a plan was made from another campus file, or another state of it, than the one given. */
export function planOriginProblems(file: PlanFile, campusDocument: unknown): Problem[] {
  const digest = digestOf(campusDocument);
  if (file.campus.digest === digest) return [];
  const place = { code: 'PLAN-OTHER-CAMPUS', record: 'campus', field: 'digest' };
  return [
    anError({ ...place, value: file.campus.digest }, [
      `The plan was made from another campus file, or from this one before it was changed.`,
      'Give the campus file that the plan was made from, or solve again.',
    ]),
  ];
}
