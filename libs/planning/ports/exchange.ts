import type { ExportFormat, ExportTable } from '#contracts/http/exports.js';
import type { ImportReport, ImportRow } from '#contracts/http/imports.js';
import type { Problem } from '#domain/problem.js';
import type { JsonDocument } from '../json-document.js';

/** One record of a file, set against a campus. */
export interface RecordReading {
  readonly place: string;
  readonly record: string;
  readonly outcome: ImportRow['outcome'];
  readonly changes: readonly ImportRow['changes'][number][];
  readonly problems: readonly Problem[];
}

/** A plan file that a bundle holds; without a document where it could not be read. */
export interface PlanReading {
  readonly name: string;
  readonly document?: JsonDocument;
  readonly problems: readonly Problem[];
}

/** A file set against a campus; whether the campus that comes of it is sound is still to be judged. */
export interface FileReading {
  readonly format: ImportReport['format'];
  /** The campus with every record that could be read. */
  readonly document: JsonDocument;
  readonly rows: readonly RecordReading[];
  /** Of the file as a whole. With an error among them nothing was read. */
  readonly problems: readonly Problem[];
  /** What the file calls the fields of a campus file, by their path. */
  readonly fieldNames: ReadonlyMap<string, string>;
  /** Plan files that a bundle holds. */
  readonly plans: readonly PlanReading[];
}

export interface ExportRequest {
  readonly format: ExportFormat;
  readonly campus: JsonDocument;
  readonly plan?: JsonDocument | undefined;
  /** Plans of a bundle by name, those made first before others. Left out: none. */
  readonly bundled?: ReadonlyMap<string, JsonDocument> | undefined;
  readonly table: ExportTable;
  /** Work year of a calendar, such as `FY2028`; left out: the first of the plan. */
  readonly year?: string | undefined;
  readonly audience: 'campus' | 'public';
}

export type ExportAnswer =
  | {
      readonly ok: true;
      readonly exported: {
        readonly fileName: string;
        readonly mediaType: string;
        readonly bytes: Uint8Array;
      };
    }
  | { readonly ok: false; readonly refusal: 'plan-needed' | 'not-public' };

/** Translates campuses and plans to and from the formats of other programs. The documents load. */
export interface Exchange {
  read(bytes: Uint8Array, campus: JsonDocument): Promise<FileReading>;
  write(request: ExportRequest): Promise<ExportAnswer>;
}
