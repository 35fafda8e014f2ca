import type { CampusFile } from '#contracts/campus-file.schema.js';
import { CAMPUS_FILE_FORMAT } from '#contracts/campus-file.schema.js';
import { parseCampusFile } from '#contracts/parse-campus-file.js';
import { hasErrors, type Problem } from '#domain/problem.js';
import { MANIFEST_NAME } from '../bundle/bundle-file.js';
import { compareCampus } from '../bundle/compare-campus.js';
import { readBundle } from '../bundle/read-bundle.js';
import { readCsv } from '../csv/read-csv.js';
import { readGeoJson } from '../geojson/read-geojson.js';
import { MOST_BYTES } from '../limits.js';
import { readHeaders } from '../sites/headers.js';
import { mergeSites } from '../sites/merge-sites.js';
import { SITE_COLUMNS } from '../sites/site-columns.data.js';
import { siteRowsOf } from '../sites/site-rows.js';
import type { ReadTable } from '../table/table.js';
import { readXlsx } from '../xlsx/read-xlsx.js';
import { unpack } from '../zip/unpack.js';
import { decodeText } from './decode-text.js';
import type { Import, ImportFormat } from './reading.js';
import { fileProblem } from './whole-file.js';

/**
 * Reads a file and sets it against a campus, whatever its name says: the kind is told by its first
 * bytes. Nothing is changed; the campus that would come of it is in the answer.
 */
export async function readImport(bytes: Uint8Array, campus: CampusFile): Promise<Import> {
  if (bytes.length > MOST_BYTES) return refused(campus, 'unknown', [tooLarge()]);
  if (bytes.length === 0) return refused(campus, 'unknown', [empty()]);
  if (startsWith(bytes, [0x50, 0x4b])) return readArchive(bytes, campus);
  if (startsWith(bytes, [0xd0, 0xcf, 0x11, 0xe0]))
    return refused(campus, 'unknown', [oldWorkbook()]);
  const decoding = decodeText(bytes);
  if (!decoding.ok) return refused(campus, 'unknown', [decoding.problem]);
  const { text } = decoding;
  if (text.trim() === '') return refused(campus, 'unknown', [empty()]);
  if (/^\s*[{[]/.test(text)) return readJson(text, campus);
  if (/^\s*BEGIN:VCALENDAR/i.test(text)) return refused(campus, 'unknown', [aCalendar()]);
  const csv = readCsv(text);
  if (!csv.ok) return refused(campus, 'csv', csv.problems);
  return readTable(csv.table, { campus, format: 'csv', warnings: csv.warnings });
}

function startsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, place) => bytes[place] === byte);
}

const NOTHING = {
  rows: [],
  fieldNames: new Map<string, string>(),
  plans: [],
};

function refused(campus: CampusFile, format: ImportFormat, problems: readonly Problem[]): Import {
  return { ...NOTHING, format, document: campus, problems };
}

async function readArchive(bytes: Uint8Array, campus: CampusFile): Promise<Import> {
  const unpacking = unpack(bytes);
  if (!unpacking.ok) return refused(campus, 'unknown', unpacking.problems);
  if (unpacking.files.has('xl/workbook.xml')) return readWorkbook(unpacking.files, campus);
  const isBundle = unpacking.files.has(MANIFEST_NAME);
  const bundle = readBundle(unpacking.files);
  if (!bundle.ok) return refused(campus, isBundle ? 'bundle' : 'unknown', bundle.problems);
  const whole = wholeCampus(campus, bundle.campus, 'bundle');
  return hasErrors(whole.problems) ? whole : { ...whole, plans: bundle.plans };
}

async function readWorkbook(
  parts: ReadonlyMap<string, Uint8Array>,
  campus: CampusFile,
): Promise<Import> {
  const reading = await readXlsx(parts);
  if (!reading.ok) return refused(campus, 'xlsx', reading.problems);
  const { tables } = reading;
  const sites = tables.find(({ name }) => name.toLowerCase() === 'sites') ?? tables[0];
  if (sites === undefined) return refused(campus, 'xlsx', [empty()]);
  return readTable(sites, { campus, format: 'xlsx', warnings: [] });
}

interface Target {
  readonly campus: CampusFile;
  readonly format: ImportFormat;
  readonly warnings: readonly Problem[];
}

function readTable(table: ReadTable, { campus, format, warnings }: Target): Import {
  const { columns, problems: ofHeaders } = readHeaders(table.headers);
  const problems = [...warnings, ...ofHeaders, ...(table.rows.length === 0 ? [noRows()] : [])];
  if (hasErrors(problems)) return refused(campus, format, problems);
  const { file, rows } = mergeSites(campus, siteRowsOf(table, columns));
  return { ...NOTHING, format, document: file, rows, problems, fieldNames: SITE_FIELDS };
}

/** Headers by the field of a campus file that they stand for. */
const SITE_FIELDS: ReadonlyMap<string, string> = new Map(
  SITE_COLUMNS.map(({ header, path }) => [path.join('.'), header]),
);

function readJson(text: string, campus: CampusFile): Import {
  const document = jsonOf(text);
  if (typeof document !== 'object' || document === null || Array.isArray(document)) {
    return refused(campus, 'unknown', [brokenJson()]);
  }
  const record = document as Readonly<Record<string, unknown>>;
  if (record['format'] === CAMPUS_FILE_FORMAT) {
    const parse = parseCampusFile(text);
    if (!parse.ok) return refused(campus, 'campus', parse.problems);
    return wholeCampus(campus, parse.file, 'campus');
  }
  const { rows, rejected, problems } = readGeoJson(record);
  if (hasErrors(problems)) return refused(campus, 'geojson', problems);
  const merged = mergeSites(campus, rows);
  const refusedRows = rejected.map(({ place, problem }) => ({
    place,
    record: problem.record,
    outcome: 'rejected' as const,
    changes: [],
    problems: [problem],
  }));
  return {
    ...NOTHING,
    format: 'geojson',
    document: merged.file,
    rows: [...merged.rows, ...refusedRows],
    problems,
    fieldNames: new Map([...SITE_FIELDS, ['boundary', 'geometry']]),
  };
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}

/** A whole campus takes the place of another state of itself, never of another campus. */
function wholeCampus(campus: CampusFile, next: CampusFile, format: ImportFormat): Import {
  if (next.id !== campus.id) return refused(campus, format, [otherCampus(campus, next)]);
  return { ...NOTHING, format, document: next, rows: compareCampus(campus, next), problems: [] };
}

function tooLarge(): Problem {
  return fileProblem('IMPORT-TOO-LARGE', [
    `The file is larger than ${MOST_BYTES / 1024 / 1024} MB.`,
    'Give the sites of one campus only, without pictures.',
  ]);
}

function empty(): Problem {
  return fileProblem('IMPORT-EMPTY', ['The file is empty.', 'Look whether it was saved.']);
}

function noRows(): Problem {
  return fileProblem('IMPORT-NO-ROWS', [
    'The table has headers and no row under them.',
    'Add a row for each site.',
  ]);
}

function oldWorkbook(): Problem {
  return fileProblem('XLSX-OLD', [
    'This is a workbook of the old kind (.xls), or one locked by a password.',
    'Save it anew as .xlsx, without a password.',
  ]);
}

function aCalendar(): Problem {
  return fileProblem('IMPORT-CALENDAR', [
    'This is a calendar; its dates come from a plan and cannot be read back.',
    'Change the campus and solve again.',
  ]);
}

function brokenJson(): Problem {
  return fileProblem('FILE-NOT-JSON', [
    'The file begins like JSON and is none: it is cut off, or a comma or bracket is out of place.',
    'Export it again.',
  ]);
}

function otherCampus(campus: CampusFile, next: CampusFile): Problem {
  return fileProblem('IMPORT-OTHER-CAMPUS', [
    `The file holds the campus ${next.id}, and it would take the place of ${campus.id}.`,
    'Give it beside the campus that it is of.',
  ]);
}
