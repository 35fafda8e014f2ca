import type { ImportReport } from '#contracts/http/imports.js';
import { changesNothing, judgeImport } from '../imports/judge-import.js';
import type { CampusReader } from '../ports/campus-reader.js';
import type { CampusStore, StoredCampus } from '../ports/campus-store.js';
import type { Exchange } from '../ports/exchange.js';
import { replaceCampus, type SaveOutcome } from './save-campus.js';

interface Ports {
  readonly campuses: CampusStore;
  readonly reader: CampusReader;
  readonly exchange: Exchange;
}

/** The dry run of an import into a stored campus. Nothing is saved. */
export async function previewImport(
  ports: Ports,
  campus: StoredCampus,
  bytes: Uint8Array,
): Promise<ImportReport> {
  return judgeImport(await ports.exchange.read(bytes, campus.document), ports.reader);
}

export type ImportOutcome =
  | { readonly kind: 'applied'; readonly version: number; readonly report: ImportReport }
  /** A record is rejected or the campus would not be sound: nothing was saved. */
  | { readonly kind: 'rejected'; readonly report: ImportReport }
  | Exclude<SaveOutcome, { kind: 'saved' }>;

/**
 * Saves an import as the next version of a campus, all of it or nothing, unless somebody else has saved
 * since it was loaded. A file that changes nothing saves nothing, so that it can be given twice.
 */
export async function applyImport(
  ports: Ports,
  campus: StoredCampus,
  bytes: Uint8Array,
): Promise<ImportOutcome> {
  const reading = await ports.exchange.read(bytes, campus.document);
  const report = judgeImport(reading, ports.reader);
  if (!report.canApply) return { kind: 'rejected', report };
  const { id, version } = campus;
  if (changesNothing(report)) return { kind: 'applied', version, report };
  const { document } = reading;
  const outcome = await replaceCampus(ports, { id, expectedVersion: version, document });
  if (outcome.kind !== 'saved') return outcome;
  return { kind: 'applied', version: outcome.campus.version, report };
}
