import type { Problem } from '#domain/problem.js';
import type { CampusPart } from '../campus-part.js';
import type { JsonDocument } from '../json-document.js';
import type { CampusReader } from '../ports/campus-reader.js';
import type { CampusStore, CampusSummary, StoredCampus } from '../ports/campus-store.js';

interface Ports {
  readonly reader: CampusReader;
  readonly campuses: CampusStore;
}

export interface PartChange {
  readonly campusId: string;
  /** Version of the campus that the person saw when the change began. */
  readonly basedOn: number;
  readonly part: CampusPart;
  readonly value: unknown;
}

export type PartOutcome =
  | {
      readonly kind: 'saved';
      readonly campus: CampusSummary;
      readonly warnings: readonly Problem[];
      /** The part as it was, which undoes the change when it is saved again. */
      readonly before: unknown;
    }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] }
  | { readonly kind: 'unknown-campus' }
  /** Somebody else changed the same part since; nothing was saved. */
  | {
      readonly kind: 'edit-conflict';
      readonly version: number;
      readonly base: unknown;
      readonly current: unknown;
    };

/** Times that another's save of another part may come in between before the change gives up. */
const MOST_TRIES = 5;

/**
 * Saves one part of a campus as its next version. Changes of other parts since `basedOn` are kept;
 * a change of the same part is a conflict that only a person can settle.
 */
export async function changePart(ports: Ports, change: PartChange): Promise<PartOutcome> {
  for (let tries = 0; tries < MOST_TRIES; tries += 1) {
    const outcome = await tryChange(ports, change);
    if (outcome !== 'overtaken') return outcome;
  }
  throw new Error(`campus ${change.campusId} changed ${MOST_TRIES} times during one save`);
}

async function tryChange(ports: Ports, change: PartChange): Promise<PartOutcome | 'overtaken'> {
  const { campusId, basedOn, part, value } = change;
  const newest = await ports.campuses.load(campusId);
  const base = await ports.campuses.load(campusId, basedOn);
  if (newest === null || base === null) return { kind: 'unknown-campus' };
  const [was, is] = [part.read(base.document), part.read(newest.document)];
  if (!isSame(was, is)) {
    return { kind: 'edit-conflict', version: newest.version, base: was, current: is };
  }
  const reading = ports.reader.read(part.write(newest.document, value));
  if (!reading.ok) return { kind: 'refused', problems: reading.problems };
  const saved = await ports.campuses.replace({
    id: campusId,
    expectedVersion: newest.version,
    name: reading.name,
    document: reading.document,
  });
  if (saved.kind === 'version-conflict') return 'overtaken';
  return saved.kind === 'saved' ? { ...saved, warnings: reading.warnings, before: is } : saved;
}

/** Problems and warnings that a change would bring into a campus and that it does not have now. */
export function problemsBroughtIn(
  reader: CampusReader,
  campus: StoredCampus,
  changed: JsonDocument,
): readonly Problem[] {
  const known = new Set(problemsOf(reader, campus.document).map((one) => JSON.stringify(one)));
  return problemsOf(reader, changed).filter((problem) => !known.has(JSON.stringify(problem)));
}

function problemsOf(reader: CampusReader, document: unknown): readonly Problem[] {
  const reading = reader.read(document);
  return reading.ok ? reading.warnings : reading.problems;
}

/** Both come from JSON text with the same order of keys, unless somebody wrote them anew. */
function isSame(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
