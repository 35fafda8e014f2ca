import type { JsonDocument } from '../json-document.js';

/** Every kind of document, in the order in which they are listed. */
export const documentKinds = [
  'administration-brief',
  'long-range-plan',
  'donor-prospectus',
  'staffing-request',
  'site-dossier',
  'materials-order',
  'work-calendar',
  'annual-report',
] as const;
export type DocumentKind = (typeof documentKinds)[number];

export const PAPERS = ['letter', 'a4'] as const;
export type Paper = (typeof PAPERS)[number];

/** One document of a plan. */
export interface DocumentWish {
  readonly kind: DocumentKind;
  /** The candidate that it is about, where its kind is about one. */
  readonly site?: string;
}

export interface WrittenDocument {
  readonly kind: DocumentKind;
  /** For example `administration-brief.pdf` or `site-dossier-TVU-19.pdf`. */
  readonly fileName: string;
  readonly mediaType: string;
  readonly bytes: Uint8Array;
}

/** A plan with all that its documents are made from. */
export interface PlanJson {
  readonly campus: JsonDocument;
  readonly plan: JsonDocument;
  readonly overview: JsonDocument;
  /** Answers about the plan, by the kind of question. */
  readonly answers: Readonly<Record<string, JsonDocument>>;
}

/** A document that can be written of a plan. */
export interface ListedDocument extends DocumentWish {
  readonly title: string;
  readonly fileName: string;
}

/** Writes the documents of a plan, as drafts. */
export interface DocumentWriter {
  /** The documents that are of use with a plan: each kind, and dossiers of the sites that come first. */
  list(plan: PlanJson): Promise<readonly ListedDocument[]>;
  /** Null: the plan has no such document. */
  write(plan: PlanJson, fileName: string, paper: Paper): Promise<WrittenDocument | null>;
}
