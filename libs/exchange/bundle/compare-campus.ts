import { canonicalJson } from '#contracts/canonical.js';
import type { CampusFile } from '#contracts/campus-file.schema.js';
import type { ImportChange } from '#contracts/http/imports.js';
import { recordAndField } from '#contracts/reading/record-names.js';
import type { RecordDraft } from '../reading/reading.js';

type Json = Readonly<Record<string, unknown>>;

/** Everything by which one campus file differs from another, record by record. */
export function compareCampus(current: CampusFile, next: CampusFile): RecordDraft[] {
  const parts = new Set([...Object.keys(current), ...Object.keys(next)]);
  parts.delete('$schema');
  return [...parts].flatMap((part) => {
    const [before, after] = [(current as Json)[part], (next as Json)[part]];
    if (isRecordList(before) || isRecordList(after)) {
      return comparedLists(part, { before: listOf(before), after: listOf(after), current, next });
    }
    return [comparedPart(part, before, after)];
  });
}

function isRecordList(value: unknown): boolean {
  return Array.isArray(value) && value.some((member) => typeof member === 'object');
}

function listOf(value: unknown): readonly Json[] {
  return Array.isArray(value) ? (value as Json[]) : [];
}

interface Lists {
  readonly before: readonly Json[];
  readonly after: readonly Json[];
  readonly current: CampusFile;
  readonly next: CampusFile;
}

function comparedLists(part: string, { before, after, current, next }: Lists): RecordDraft[] {
  const known = new Map(before.map((member) => [keyOf(member), member]));
  const kept = new Set(after.map(keyOf));
  const order = after.map(keyOf).filter((key) => known.has(key));
  const isMoved =
    order.join('\n') !==
    before
      .map(keyOf)
      .filter((key) => kept.has(key))
      .join('\n');
  const place = `part ${part}`;
  const named = (file: CampusFile, index: number): string =>
    recordAndField(file, [part, index]).record;
  return [
    ...after.map((member, index): RecordDraft => {
      const old = known.get(keyOf(member));
      return draft(place, named(next, index), changesOf(old, member));
    }),
    ...before.flatMap((member, index): RecordDraft[] =>
      kept.has(keyOf(member))
        ? []
        : [{ place, record: named(current, index), outcome: 'removed', changes: [], problems: [] }],
    ),
    ...(isMoved ? [draft(place, part, [{ field: 'order', from: 'as it is', to: 'another' }])] : []),
  ];
}

/** What tells a record from others of its list: its id, else all that it says. */
function keyOf(member: Json): string {
  if (typeof member['id'] === 'string') return member['id'];
  return canonicalJson(member);
}

/** Undefined: the record is new. */
function changesOf(before: Json | undefined, after: Json): ImportChange[] | undefined {
  if (before === undefined) return undefined;
  const fields = new Set([...Object.keys(before), ...Object.keys(after)]);
  return [...fields].flatMap((field) => changeOf(field, before[field], after[field]));
}

function changeOf(field: string, before: unknown, after: unknown): ImportChange[] {
  if (canonicalJson(before) === canonicalJson(after)) return [];
  return [{ field, from: shown(before), to: shown(after) }];
}

function comparedPart(part: string, before: unknown, after: unknown): RecordDraft {
  const isRecord = (value: unknown): value is Json =>
    typeof value === 'object' && value !== null && !Array.isArray(value);
  const changes =
    isRecord(before) && isRecord(after) ? changesOf(before, after) : changeOf(part, before, after);
  return draft(`part ${part}`, part, changes);
}

function draft(
  place: string,
  record: string,
  changes: readonly ImportChange[] | undefined,
): RecordDraft {
  const outcome = changes === undefined ? 'new' : changes.length > 0 ? 'changed' : 'unchanged';
  return { place, record, outcome, changes: changes ?? [], problems: [] };
}

function shown(value: unknown): string {
  if (value === undefined) return '';
  const text = typeof value === 'string' ? value : canonicalJson(value);
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}
