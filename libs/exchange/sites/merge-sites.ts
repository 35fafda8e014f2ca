import { canonicalJson } from '#contracts/canonical.js';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import type { ImportChange } from '#contracts/http/imports.js';
import { anError, type Problem } from '#domain/problem.js';
import type { RecordDraft } from '../reading/reading.js';
import { cellText, keptText } from '../table/table.js';
import { mergeBoundary } from './merge-boundary.js';
import { mergeGates } from './merge-gates.js';
import { cellProblem, NO_VALUE, readCell } from './read-cell.js';
import { siteCell } from './site-cells.js';
import type { SiteColumn } from './site-columns.data.js';
import { siteRecords, type SiteRecord } from './site-record.js';
import type { SiteRow } from './site-rows.js';

export interface MergedSites {
  readonly file: CampusFile;
  readonly rows: readonly RecordDraft[];
}

/**
 * Sets rows of sites against a campus. A blank cell says nothing: the field stays as it is. Rows that
 * cannot be read are left out of the campus that comes back; whether it is sound is asked later.
 */
export function mergeSites(file: CampusFile, rows: readonly SiteRow[]): MergedSites {
  const known = new Map(siteRecords(file).map((record) => [record.site.id, record]));
  const seen = new Map<string, string>();
  const merged = rows.map((row) => {
    const id = idOf(row);
    const refusal = rowRefusal(row, seen.get(id));
    if (!seen.has(id)) seen.set(id, row.place);
    return refusal ? rejected(row, [refusal]) : mergeRow(row, known.get(id));
  });
  const results = new Map(
    merged.flatMap(({ result }) => (result ? [[result.site.id, result]] : [])),
  );
  return { file: withSites(file, results), rows: merged.map(({ draft }) => draft) };
}

interface MergedRow {
  readonly draft: RecordDraft;
  readonly result?: SiteRecord;
}

function textIn(row: SiteRow, header: string): string {
  for (const [column, text] of row.cells) if (column.header === header) return text.trim();
  return '';
}

function idOf(row: SiteRow): string {
  return textIn(row, 'id');
}

function recordOf(row: SiteRow): string {
  return idOf(row) === '' ? row.place : `site ${idOf(row)}`;
}

function rejected(row: SiteRow, problems: readonly Problem[]): MergedRow {
  const { place } = row;
  return { draft: { place, record: recordOf(row), outcome: 'rejected', changes: [], problems } };
}

function rowRefusal(row: SiteRow, before: string | undefined): Problem | undefined {
  const refuse = (code: string, field: string, text: readonly [string, string]): Problem =>
    anError({ code, record: recordOf(row), field, value: idOf(row) || null }, text);
  if (row.slipped) {
    return refuse('ROW-SLIPPED', '', [
      'The row has more cells than there are headers: a text with a comma most likely lacks its quotes.',
      'Put quotes around the text that holds the comma.',
    ]);
  }
  if (idOf(row) === '') {
    return refuse('ROW-WITHOUT-ID', 'id', [
      'The row has no id, so nobody can tell which site is meant.',
      'Give the id of the site, or a new one for a new site.',
    ]);
  }
  if (before === undefined) return undefined;
  return refuse('ROW-TWICE', 'id', [
    `The site stands in ${before} already.`,
    'Keep one of the two, or give the other its own id.',
  ]);
}

function mergeRow(row: SiteRow, current: SiteRecord | undefined): MergedRow {
  const stage = textIn(row, 'stage').toLowerCase() || (current?.stage ?? 'candidate');
  if (stage !== 'candidate' && stage !== 'existing')
    return rejected(row, [unknownStage(row, stage)]);
  if (current && current.stage !== stage) return rejected(row, [otherStage(row, current.stage)]);
  const base = current ?? newSite(stage, idOf(row));
  const draft = structuredClone(base.site) as unknown as Record<string, unknown>;
  const problems: Problem[] = [];
  for (const [column, text] of row.cells) {
    const before = cellText(siteCell(base, column));
    if (keptText(before) === keptText(text)) continue;
    problems.push(...applyCell(draft, { row, column, text, stage }));
  }
  mergeGates(row, { base: base.site.gates, draft, problems });
  const redrawn = row.boundary === undefined ? [] : mergeBoundary(draft, row.boundary);
  if (problems.length > 0) return rejected(row, problems);
  const isSame = canonicalJson(draft) === canonicalJson(base.site);
  const outcome = current === undefined ? 'new' : isSame ? 'unchanged' : 'changed';
  const changes = outcome === 'changed' ? [...changedCells(row, base, draft), ...redrawn] : [];
  return {
    draft: { place: row.place, record: recordOf(row), outcome, changes, problems },
    ...(outcome === 'unchanged' ? {} : { result: { stage, site: draft } as unknown as SiteRecord }),
  };
}

function changedCells(row: SiteRow, base: SiteRecord, draft: object): ImportChange[] {
  const result = { ...base, site: draft } as unknown as SiteRecord;
  return [...row.cells.keys()].flatMap((column) => {
    const from = cellText(siteCell(base, column));
    const to = cellText(siteCell(result, column));
    return from === to ? [] : [{ field: column.header, from: short(from), to: short(to) }];
  });
}

interface CellAt {
  readonly row: SiteRow;
  readonly column: SiteColumn;
  readonly text: string;
  readonly stage: SiteRecord['stage'];
}

function applyCell(draft: Record<string, unknown>, at: CellAt): Problem[] {
  const { column, row, stage, text } = at;
  if (column.kind === 'stage' || column.kind === 'id') return [];
  if (column.only !== undefined && column.only !== stage) return [wrongStage(row, column, stage)];
  const reading = readCell(text, column);
  if (!reading.ok) return [cellProblem(recordOf(row), { column, text }, reading)];
  if (column.kind !== 'gates') put(draft, column.path, reading.value);
  return [];
}

function put(draft: Record<string, unknown>, path: readonly string[], value: unknown): void {
  const [key = '', ...rest] = path;
  if (rest.length > 0) put(draft[key] as Record<string, unknown>, rest, value);
  else if (value === NO_VALUE) delete draft[key];
  else draft[key] = value;
}

const UNKNOWN_FACTS = {
  cover: 'unknown',
  soil: 'unknown',
  ph: 'unknown',
  organicMatterPercent: 'unknown',
  leadMgPerKg: 'unknown',
  slopePercent: 'unknown',
  sunHours: 'unknown',
  walkersPerDay: 'unknown',
  waterFeet: 'unknown',
  kitchenFeet: 'unknown',
  truckAccess: 'unknown',
  rootProtectedShare: 'unknown',
} as const satisfies CampusFile['candidateSites'][number]['facts'];

/** A site of which nothing is known yet; what must be stated is missing until a row states it. */
function newSite(stage: SiteRecord['stage'], id: string): SiteRecord {
  const own = stage === 'candidate' ? { costFactor: 1, notes: [] } : {};
  const site = { id, facts: UNKNOWN_FACTS, gates: [], evidence: [], ...own };
  return { stage, site } as unknown as SiteRecord;
}

function withSites(file: CampusFile, results: ReadonlyMap<string, SiteRecord>): CampusFile {
  const kept = <Site extends { id: string }>(sites: readonly Site[]): Site[] =>
    sites.map((site) => (results.get(site.id)?.site as Site | undefined) ?? site);
  const known = new Set(siteRecords(file).map(({ site }) => site.id));
  const added = [...results.values()].filter(({ site }) => !known.has(site.id));
  return {
    ...file,
    candidateSites: [
      ...kept(file.candidateSites),
      ...added.flatMap((record) => (record.stage === 'candidate' ? [record.site] : [])),
    ],
    existingSites: [
      ...kept(file.existingSites),
      ...added.flatMap((record) => (record.stage === 'existing' ? [record.site] : [])),
    ],
  };
}

function short(text: string): string {
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}

function unknownStage(row: SiteRow, stage: string): Problem {
  const place = { code: 'SITE-STAGE-UNKNOWN', record: recordOf(row), field: 'stage', value: stage };
  return anError(place, [`"${stage}" is no stage of a site.`, 'Write candidate or existing.']);
}

function otherStage(row: SiteRow, stage: string): Problem {
  const place = { code: 'SITE-STAGE-CHANGED', record: recordOf(row), field: 'stage', value: stage };
  return anError(place, [
    `The site is ${stage} in the campus, and this row would make it something else.`,
    'Leave the stage as it is; a site that was planted is moved in the campus file itself.',
  ]);
}

function wrongStage(row: SiteRow, { header }: SiteColumn, stage: string): Problem {
  const place = { code: 'SITE-FIELD-OF-OTHER-STAGE', record: recordOf(row), field: header };
  return anError(place, [
    stage === 'existing'
      ? 'A site that is planted already has no such field.'
      : 'A candidate site has no such field.',
    'Leave the cell blank, or correct the stage.',
  ]);
}
