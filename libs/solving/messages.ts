import type { MessagePort } from 'node:worker_threads';
import type { Campus } from '#domain/campus.js';
import type { Decisions, Plan } from '#domain/plan.js';
import type { ConflictMember } from '#domain/tier.js';
import type { SolveProgress, SolveSettings } from '#optimizer/solve/settings.js';
import type { SolveResult } from '#optimizer/solve/solve-campus.js';

/** What a solving thread is given. */
export interface ThreadOrder {
  /** To search for plans, or to prove beside a partner that does. */
  readonly part: 'search' | 'proof';
  readonly campus: Campus;
  readonly settings: SolveSettings;
  /** Decisions of an earlier plan to begin from. */
  readonly start?: Decisions;
  /** One byte, shared: 1 asks the thread to stop. */
  readonly stop: SharedArrayBuffer;
  /** Leads to the other thread of the same solve. Left out: there is none. */
  readonly partner?: MessagePort;
}

/** What a solving thread tells. */
export type ThreadMessage =
  | { readonly kind: 'started'; readonly solverName: string; readonly solverVersion: string }
  | { readonly kind: 'progress'; readonly progress: SolveProgress }
  | { readonly kind: 'plan'; readonly plan: Plan; readonly values: readonly number[] }
  | { readonly kind: 'no-plan'; readonly conflict: readonly ConflictMember[] }
  | { readonly kind: 'result'; readonly result: SolveResult }
  /** Its part is done, and it may be given another. */
  | { readonly kind: 'idle' };
