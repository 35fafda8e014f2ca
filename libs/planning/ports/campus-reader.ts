import type { JsonDocument } from '../json-document.js';
import type { Problem } from '#domain/problem.js';

/** Judges a campus document. The adapter parses it in full and reports every problem at once. */
export interface CampusReader {
  read(document: unknown): CampusReading;
}

export type CampusReading =
  | {
      readonly ok: true;
      /** The campus's own name, for lists. */
      readonly name: string;
      /** The document to keep, as it was given. */
      readonly document: JsonDocument;
      readonly warnings: readonly Problem[];
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };
