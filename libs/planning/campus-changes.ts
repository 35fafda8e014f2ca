import type { ChangeStep } from '#explain/questions/compare/attribute-changes.js';
import { loadCampusFile } from './load-campus-file.js';

type Document = Readonly<Record<string, unknown>>;

/** Parts of a campus file that say which it is and bear on no plan. */
const LABELS = new Set(['$schema', 'id', 'name', 'program', 'dataDate', 'format', 'formatVersion']);

interface Change {
  readonly name: string;
  readonly apply: (document: Document) => Document;
}

/**
 * The second version of a campus file reached from the first by one change after the other: part by part
 * in the order of the file, within a list record by record. A change that makes no usable file by itself
 * is taken together with the next.
 */
export function campusChanges(first: unknown, second: unknown): ChangeStep[] {
  const [from, to] = [first as Document, second as Document];
  const steps: ChangeStep[] = [];
  let document = from;
  let names: string[] = [];
  for (const change of changesOf(from, to)) {
    document = change.apply(document);
    names.push(change.name);
    const load = loadCampusFile(document);
    if (!load.ok) continue;
    steps.push({ change: names.join(', with '), campus: load.campus });
    names = [];
  }
  return steps;
}

function changesOf(from: Document, to: Document): Change[] {
  const parts = [...new Set([...Object.keys(from), ...Object.keys(to)])].filter(
    (p) => !LABELS.has(p),
  );
  return parts.flatMap((part) => {
    const [a, b] = [from[part], to[part]];
    if (same(a, b)) return [];
    const whole = [{ name: part, apply: (d: Document) => ({ ...d, [part]: b }) }];
    return isRecords(a) && isRecords(b) ? recordChanges(part, a, b) : whole;
  });
}

type Records = readonly (Document & { readonly id: string })[];

function isRecords(value: unknown): value is Records {
  return (
    Array.isArray(value) &&
    value.length > 0 &&
    value.every((v) => typeof (v as Document | null)?.['id'] === 'string')
  );
}

function recordChanges(part: string, a: Records, b: Records): Change[] {
  const ids = [...new Set([...a, ...b].map((r) => r.id))];
  return ids.flatMap((id) => {
    const [before, after] = [a.find((r) => r.id === id), b.find((r) => r.id === id)];
    if (same(before, after)) return [];
    const how = before === undefined ? ' added' : after === undefined ? ' left out' : '';
    const apply = (d: Document): Document => {
      const list = d[part] as Records;
      const kept = list.flatMap((r) => (r.id === id ? (after ? [after] : []) : [r]));
      return { ...d, [part]: before === undefined && after ? [...kept, after] : kept };
    };
    return [{ name: `${part} ${id}${how}`, apply }];
  });
}

function same(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
