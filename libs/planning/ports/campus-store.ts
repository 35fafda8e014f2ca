import type { JsonDocument } from '../json-document.js';

/** One line of the list of campuses. */
export interface CampusSummary {
  readonly id: string;
  readonly name: string;
  /** Newest version, 1 or more. */
  readonly version: number;
  /** When the newest version was saved. */
  readonly savedAt: Date;
}

/** One saved version of one campus, with its document. */
export interface StoredCampus extends CampusSummary {
  readonly document: JsonDocument;
}

export type ReplaceOutcome =
  | { readonly kind: 'saved'; readonly campus: CampusSummary }
  | { readonly kind: 'unknown-campus' }
  /** Somebody else saved first; `current` is the version to look at before trying again. */
  | { readonly kind: 'version-conflict'; readonly current: number };

/** Keeps every version of every campus; a saved version never changes. */
export interface CampusStore {
  /** Adds a campus as its version 1. */
  add(campus: { name: string; document: JsonDocument }): Promise<CampusSummary>;

  /** Saves the next version, if `expectedVersion` still is the newest. */
  replace(change: {
    id: string;
    expectedVersion: number;
    name: string;
    document: JsonDocument;
  }): Promise<ReplaceOutcome>;

  /** Newest first. */
  list(): Promise<readonly CampusSummary[]>;

  /** Left out `version`: the newest. Null when there is no such campus or version. */
  load(id: string, version?: number): Promise<StoredCampus | null>;
}
