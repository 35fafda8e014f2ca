import type { ImportReport, ImportRow } from '#contracts/http/imports.js';
import { anError, hasErrors, type Problem } from '#domain/problem.js';
import type { Rings } from '#domain/site.js';
import type { CampusReader } from '../ports/campus-reader.js';
import type { FileReading, RecordReading } from '../ports/exchange.js';
import { judgePlans } from './judge-plans.js';
import { unitMixUp } from './unit-mix-up.js';

/** Warnings of a campus that are more likely a slip when they come with an import. */
const SLIPS: ReadonlySet<string> = new Set(['SITE-FAR-FROM-CAMPUS']);

/**
 * The dry run of an import: what it would do with each record, once the campus that would come of it
 * was judged as a whole. An import is of one piece, so one rejected record keeps all from being saved.
 */
export function judgeImport(reading: FileReading, reader: CampusReader): ImportReport {
  const { format, problems: ofFile } = reading;
  if (hasErrors(ofFile)) return reportOf(format, [], ofFile);
  const judged = reader.read(reading.document);
  const found = judged.ok ? judged.warnings : judged.problems;
  const byRow = new Map<RecordReading, Problem[]>(
    reading.rows.map((row) => [row, [...unitProblems(reading, row)]]),
  );
  const unplaced: Problem[] = [];
  for (const problem of found) {
    const row = rowOf(problem, reading.rows);
    const own = row && byRow.get(row);
    if (own === undefined) unplaced.push(problem);
    else if (!own.some(({ field }) => field === problem.field)) own.push(atLeastSlip(problem));
  }
  const rows = reading.rows.map((row) => judgedRow(row, byRow.get(row) ?? [], reading));
  const plans = judgePlans(reading);
  return { ...reportOf(format, rows, [...ofFile, ...unplaced.filter(isError)]), plans };
}

function isError({ severity }: Problem): boolean {
  return severity === 'error';
}

function atLeastSlip(problem: Problem): Problem {
  return SLIPS.has(problem.code) ? { ...problem, severity: 'error' } : problem;
}

/** The record that a problem is of: the one it names, or for an error one that its sentence tells of. */
function rowOf(problem: Problem, rows: readonly RecordReading[]): RecordReading | undefined {
  const touched = rows.filter(({ outcome }) => outcome === 'new' || outcome === 'changed');
  const named = touched.find(({ record }) => record === problem.record);
  if (named || !isError(problem)) return named;
  const words = new Set(problem.problem.split(/[\s,;:()"]+/).map((w) => w.replace(/[.']+$/, '')));
  return touched.find(({ record }) => words.has(record.replace(/^site /, '')));
}

function unitProblems({ document }: FileReading, { outcome, record }: RecordReading): Problem[] {
  if (outcome !== 'new' && outcome !== 'changed') return [];
  const site = siteOf(document, record);
  if (site === undefined || site.areaSqFt <= 0) return [];
  const text = unitMixUp(site.areaSqFt, site.boundary.coordinates);
  const place = { code: 'SITE-AREA-UNIT', record, field: 'areaSqFt', value: site.areaSqFt };
  return text === undefined ? [] : [anError(place, text)];
}

interface Drawn {
  readonly id: string;
  readonly areaSqFt: number;
  readonly boundary: { readonly coordinates: Rings };
}

/** The site of a record in a document that is not judged yet, if its area can be worked out. */
function siteOf(document: FileReading['document'], record: string): Drawn | undefined {
  const lists = [document['candidateSites'], document['existingSites']].filter(Array.isArray);
  return (lists as unknown as Partial<Drawn>[][])
    .flat()
    .find((site): site is Drawn => `site ${site.id}` === record && isDrawn(site));
}

function isDrawn({ areaSqFt, boundary }: Partial<Drawn>): boolean {
  const ring = boundary?.coordinates[0];
  return typeof areaSqFt === 'number' && ring !== undefined && ring.length > 3 && onEarth(ring);
}

function onEarth(ring: Rings[number]): boolean {
  return ring.every(([x, y]) => Math.abs(x) <= 180 && Math.abs(y) <= 90);
}

function judgedRow(row: RecordReading, found: readonly Problem[], of: FileReading): ImportRow {
  const problems = [...row.problems, ...found.map((problem) => inWordsOfFile(problem, of))];
  const outcome = problems.some(isError) ? 'rejected' : row.outcome;
  const changes = outcome === 'rejected' ? [] : [...row.changes];
  return { ...row, outcome, changes, problems };
}

/** The field as the file calls it: a column header in place of a path. */
function inWordsOfFile(problem: Problem, { fieldNames }: FileReading): Problem {
  const whole = /^[A-Za-z]+/.exec(problem.field)?.[0] ?? '';
  const field = fieldNames.get(problem.field) ?? fieldNames.get(whole) ?? problem.field;
  return { ...problem, field };
}

function reportOf(
  format: ImportReport['format'],
  rows: ImportRow[],
  problems: readonly Problem[],
): ImportReport {
  const count = (outcome: ImportRow['outcome']): number =>
    rows.filter((row) => row.outcome === outcome).length;
  const counts = {
    unchanged: count('unchanged'),
    new: count('new'),
    changed: count('changed'),
    removed: count('removed'),
    rejected: count('rejected'),
  };
  const canApply = counts.rejected === 0 && !problems.some(isError);
  return { format, counts, canApply, rows, plans: [], problems: [...problems] };
}

/** Whether an import would change nothing of the campus; plans may come in all the same. */
export function changesNothing({ counts }: ImportReport): boolean {
  return counts.new + counts.changed + counts.removed + counts.rejected === 0;
}
