import type { CampusReader } from '../ports/campus-reader.js';
import type { CampusStore, CampusSummary } from '../ports/campus-store.js';
import type { Problem } from '#domain/problem.js';

interface Ports {
  readonly reader: CampusReader;
  readonly campuses: CampusStore;
}

export type SaveOutcome =
  | {
      readonly kind: 'saved';
      readonly campus: CampusSummary;
      readonly warnings: readonly Problem[];
    }
  /** Every problem of the document at once; nothing was saved. */
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] }
  | { readonly kind: 'unknown-campus' }
  | { readonly kind: 'version-conflict'; readonly current: number };

/** Adds a campus from a document that parses without an error. */
export async function addCampus(ports: Ports, document: unknown): Promise<SaveOutcome> {
  const reading = ports.reader.read(document);
  if (!reading.ok) return { kind: 'refused', problems: reading.problems };
  const campus = await ports.campuses.add({ name: reading.name, document: reading.document });
  return { kind: 'saved', campus, warnings: reading.warnings };
}

/** Saves the next version of a campus, unless somebody else has saved since `expectedVersion`. */
export async function replaceCampus(
  ports: Ports,
  change: { id: string; expectedVersion: number; document: unknown },
): Promise<SaveOutcome> {
  const reading = ports.reader.read(change.document);
  if (!reading.ok) return { kind: 'refused', problems: reading.problems };
  const outcome = await ports.campuses.replace({
    id: change.id,
    expectedVersion: change.expectedVersion,
    name: reading.name,
    document: reading.document,
  });
  return outcome.kind === 'saved' ? { ...outcome, warnings: reading.warnings } : outcome;
}
