import type { Campus } from '#domain/campus.js';
import { anError, hasErrors, type Problem, type ProblemText } from '#domain/problem.js';
import { CAMPUS_FILE_FORMAT, campusFileSchema, type CampusFile } from './campus-file.schema.js';
import { checkFile } from './checks/check-file.js';
import { fileView } from './checks/file-view.js';
import { fieldNames } from './reading/field-names.js';
import { issueProblems } from './reading/issue-problems.js';
import { issuesOf } from './reading/issues.js';
import { readJsonText } from './reading/json-text.js';
import { isRecord, THE_FILE } from './reading/record-names.js';
import { salvage } from './reading/salvage.js';
import { sitePartsOf, type SiteParts } from './site-parts.js';
import { toDomain } from './to-domain.js';

export type CampusParse =
  | {
      readonly ok: true;
      readonly campus: Campus;
      readonly file: CampusFile;
      readonly warnings: readonly Problem[];
    }
  | {
      readonly ok: false;
      /** Errors and warnings, in the order of the file's parts. */
      readonly problems: readonly Problem[];
      /** What could be read of the sites, so that their boundaries can be judged all the same. */
      readonly sites: SiteParts;
    };

/**
 * Reads a campus file, as text or parsed already, and reports every problem of it at once. Nothing is
 * half-loaded: one error and there is no campus. Boundaries are judged by `loadCampusFile`.
 */
export function parseCampusFile(input: unknown): CampusParse {
  if (typeof input !== 'string') return parseDocument(input, []);
  const reading = readJsonText(input);
  return reading.ok ? parseDocument(reading.value, reading.problems) : refused(reading.problems);
}

function parseDocument(document: unknown, before: readonly Problem[]): CampusParse {
  const foreign = foreignProblem(document);
  if (foreign || !isRecord(document)) return refused([...before, ...(foreign ? [foreign] : [])]);
  const parsed = campusFileSchema.safeParse(document);
  const issues = parsed.success ? [] : issuesOf(parsed.error, document);
  const named = (path: readonly PropertyKey[]) => fieldNames(campusFileSchema, path);
  const unreadable = [...before, ...issueProblems(issues, document, named)];
  const parts = parsed.success ? parsed.data : salvage(document);
  const found = checkFile(fileView(parts, document)).filter((p) => !isSaid(p, unreadable));
  const problems = [...unreadable, ...found];
  if (!parsed.success || hasErrors(problems)) {
    return { ok: false, problems, sites: sitePartsOf(parts) };
  }
  return { ok: true, campus: toDomain(parsed.data), file: parsed.data, warnings: problems };
}

/** One field is not blamed twice. */
function isSaid({ record, field }: Problem, said: readonly Problem[]): boolean {
  return said.some((p) => p.record === record && p.field === field);
}

function refused(problems: readonly Problem[]): CampusParse {
  return { ok: false, problems, sites: sitePartsOf({}) };
}

/** A document that is no campus file at all is told so, instead of a hundred missing fields. */
function foreignProblem(document: unknown): Problem | undefined {
  if (!isRecord(document)) {
    return fileError('FILE-NOT-A-RECORD', '', [
      'The file holds JSON, but not a record of fields.',
      'Give a campus file: one JSON object that begins with { and names its format.',
    ]);
  }
  if (document.format !== CAMPUS_FILE_FORMAT) {
    return fileError('FILE-FORMAT', 'format', [
      'This is not a campus file.',
      `A campus file says "format": "${CAMPUS_FILE_FORMAT}".`,
    ]);
  }
  if (document.formatVersion === 1) return undefined;
  return fileError('FILE-VERSION', 'formatVersion', [
    'This version of the campus file is not known here.',
    'Give version 1, or use a newer release of this program.',
  ]);
}

function fileError(code: string, field: string, text: ProblemText): Problem {
  return anError({ code, record: THE_FILE, field }, text);
}
