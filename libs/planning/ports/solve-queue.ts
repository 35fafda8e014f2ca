import type { Problem } from '#domain/problem.js';
import type { JsonDocument } from '../json-document.js';
import type { ConflictMember, Ending } from '#domain/tier.js';
import type { SolveLimits } from '../solve-limits.js';
import type { SolveProgress, SolveRequest } from '../solve-request.js';
import type { NewPlan } from './plan-store.js';

export interface NewSolveRequest {
  readonly campusId: string;
  readonly campusVersion: number;
  readonly seed: number;
  readonly limits: SolveLimits;
  /** An earlier plan of the campus to begin from; left out: from nothing. */
  readonly startFromPlan?: string | undefined;
  /** A plan to check and keep in place of solving; seed and limits are then those it states. */
  readonly brought?: BroughtPlan | undefined;
}

/** A plan file that came in by a bundle, and its name there. */
export interface BroughtPlan {
  readonly name: string;
  readonly document: JsonDocument;
}

/** A request in the hands of a worker. */
export interface TakenSolve {
  readonly lease: SolveLease;
  readonly request: SolveRequest;
  /** The plan file to check and keep; null: the campus is to be solved. */
  readonly brought: JsonDocument | null;
}

/** The right to work on one request, held by one worker until it lapses. */
export interface SolveLease {
  readonly requestId: string;
  /** Different for every taking, so a worker that lost a lease cannot act on the next one. */
  readonly holder: string;
}

/** What `renew` answers. `cancel-wanted` still holds the lease; `lost` must store nothing. */
export type LeaseState = 'held' | 'cancel-wanted' | 'lost';

/** How a worker closes a request. */
export type SolveClosing =
  | { readonly kind: 'solved'; readonly ending: Ending; readonly plan: NewPlan }
  /** A plan that came in by a bundle passed its checks. One that is here already stays as it is. */
  | { readonly kind: 'brought-in'; readonly plan: NewPlan }
  | {
      readonly kind: 'without-plan';
      readonly ending: Ending;
      readonly conflict: readonly ConflictMember[];
    }
  | { readonly kind: 'failed'; readonly problem: Problem };

export type CancelOutcome = 'cancelled' | 'cancel-wanted' | 'already-final' | 'unknown-request';

/** A request that a sweep found without a living worker, and what became of it. */
export interface RecoveredSolve {
  readonly requestId: string;
  readonly became: 'queued' | 'failed' | 'cancelled';
}

/**
 * Moves solve requests between their states. Each method is one short transaction in which the
 * request, its queue job and its plan change together or not at all, so a process may die anywhere.
 */
export interface SolveQueue {
  /** A request in state `queued`, and the job that makes a worker pick it up. */
  enqueue(request: NewSolveRequest): Promise<SolveRequest>;

  /** Takes the oldest waiting request, counting an attempt. Null: nothing waits. */
  take(): Promise<TakenSolve | null>;

  /** Renews the lease and, where given, records progress. */
  renew(lease: SolveLease, progress: SolveProgress | null): Promise<LeaseState>;

  /**
   * Closes the request and stores its plan, if the lease is still held. False: lost, nothing stored.
   * A request whose ending is a cancelled one becomes `cancelled`, every other solved one `done`.
   */
  finish(lease: SolveLease, closing: SolveClosing): Promise<boolean>;

  /** Puts the request back in the queue without counting the attempt (orderly stop of a worker). */
  giveBack(lease: SolveLease): Promise<boolean>;

  /** Cancels a waiting request at once; asks the worker of a running one to stop. */
  cancel(requestId: string): Promise<CancelOutcome>;

  /** Frees or closes each request whose lease lapsed, and queues again any that lost its job. */
  recover(lapsesAfterMilliseconds: number): Promise<readonly RecoveredSolve[]>;

  /** Resolves when the store answers. */
  ping(): Promise<void>;
}
