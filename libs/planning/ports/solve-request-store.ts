import type { SolveRequest } from '../solve-request.js';

/** Reads solve requests. Every change goes through the `SolveQueue`. */
export interface SolveRequestStore {
  find(id: string): Promise<SolveRequest | null>;

  /** Newest first. */
  listOf(campusId: string): Promise<readonly SolveRequest[]>;
}
