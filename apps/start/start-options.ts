import type { JsonDocument } from '#planning/json-document.js';
import type { CampusReader } from '#planning/ports/campus-reader.js';
import type { DocumentWriter } from '#planning/ports/document-writer.js';
import type { PlanOverview } from '#planning/ports/plan-overview.js';
import type { Terminal } from './terminal/terminal.js';

/** The adapters and child programs of `npm start`. */
export interface StartAdapters {
  readonly reader: CampusReader;
  readonly writer: DocumentWriter;
  readonly overview: PlanOverview;
  /** The lines of a plan's headline, from its overview. */
  readonly headline: (overview: JsonDocument) => readonly string[];
  /** Paths of the child programs. */
  readonly programs: { readonly store: string; readonly api: string; readonly solver: string };
}

export interface StartOptions {
  /** Left out: the embedded store in `storeFolder`. */
  readonly databaseUrl?: string;
  readonly storeFolder: string;
  /** Where the documents go. */
  readonly outFolder: string;
  readonly demoFile: string;
  readonly host: string;
  readonly port: number;
  readonly stopping: AbortSignal;
  readonly terminal: Terminal;
}
