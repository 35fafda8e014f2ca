import type { JsonDocument } from '../json-document.js';

export const documentKinds = ['administration-brief'] as const;
export type DocumentKind = (typeof documentKinds)[number];

export interface WrittenDocument {
  readonly kind: DocumentKind;
  /** For example `administration-brief.pdf`. */
  readonly fileName: string;
  readonly mediaType: string;
  readonly bytes: Uint8Array;
}

/** Writes one document of a plan. */
export interface DocumentWriter {
  write(request: {
    kind: DocumentKind;
    campus: JsonDocument;
    plan: JsonDocument;
    overview: JsonDocument;
  }): Promise<WrittenDocument>;
}
