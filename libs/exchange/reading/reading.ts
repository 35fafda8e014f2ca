import type { ImportChange, ImportReport } from '#contracts/http/imports.js';
import type { PlanFile } from '#contracts/plan-file.js';
import type { Problem } from '#domain/problem.js';

export type ImportFormat = ImportReport['format'];

/** One record of a file, set against the campus; whether the campus stays sound is asked later. */
export interface RecordDraft {
  readonly place: string;
  /** As the problems of a campus name it, for example `site TVU-14`. */
  readonly record: string;
  readonly outcome: 'unchanged' | 'new' | 'changed' | 'removed' | 'rejected';
  readonly changes: readonly ImportChange[];
  readonly problems: readonly Problem[];
}

/** A plan file that a bundle holds; without a file where it could not be read. */
export interface PlanDraft {
  readonly name: string;
  readonly file?: PlanFile;
  readonly problems: readonly Problem[];
}

/** A file set against a campus: what the campus would become, record by record. */
export interface Import {
  readonly format: ImportFormat;
  /** The campus document with every record that is not rejected; the campus itself where none is. */
  readonly document: unknown;
  readonly rows: readonly RecordDraft[];
  /** Of the file as a whole. With an error among them nothing was read. */
  readonly problems: readonly Problem[];
  /** What the file calls the fields of a campus file, by their path; others have their own name. */
  readonly fieldNames: ReadonlyMap<string, string>;
  /** Plans that a bundle holds. */
  readonly plans: readonly PlanDraft[];
}
