import type { Problem } from '#domain/problem.js';
import type { JsonDocument } from '../json-document.js';

/** `queued` waits for a worker, `working` has one with a lease; the other two are final. */
export type ExplanationState = 'queued' | 'working' | 'done' | 'failed';

/** What is worked on at the moment. */
export interface ExplanationProgress {
  readonly message: string;
  /** Share done, 0 to 1. */
  readonly share: number;
}

/** A question about a plan or a campus, and in time its answer. */
export interface Explanation extends NewExplanation {
  readonly state: ExplanationState;
  readonly progress: ExplanationProgress | null;
  readonly answer: JsonDocument | null;
  readonly problem: Problem | null;
  readonly attempts: number;
  readonly askedAt: Date;
  readonly finishedAt: Date | null;
}

/** What is asked about: a plan, or a version of a campus that need not have one. */
export type QuestionSubject =
  { readonly planId: string } | { readonly campusId: string; readonly campusVersion: number };

export interface NewExplanation {
  readonly id: string;
  readonly about: QuestionSubject;
  /** As it was asked: its kind and particulars. */
  readonly question: JsonDocument;
  readonly seconds: number;
}

/** The right to answer one question, until it lapses. */
export interface ExplanationLease {
  readonly id: string;
  readonly holder: string;
}

export type ExplanationClosing = { readonly answer: JsonDocument } | { readonly problem: Problem };

/** Questions, their leases and their answers. Each method is one short transaction. */
export interface ExplanationStore {
  add(explanation: NewExplanation): Promise<Explanation>;

  load(id: string): Promise<Explanation | null>;

  /** Of a plan, newest first. */
  listOf(planId: string): Promise<readonly Explanation[]>;

  /** Of every version of a campus itself, newest first. */
  listOfCampus(campusId: string): Promise<readonly Explanation[]>;

  /**
   * Takes the oldest question that waits, or whose worker let its lease lapse. One that took down its
   * workers too often is failed and passed over. Null: nothing waits.
   */
  take(
    lapsesAfterMilliseconds: number,
  ): Promise<{ readonly lease: ExplanationLease; readonly explanation: Explanation } | null>;

  /** Renews the lease and notes progress. False: lost. */
  renew(lease: ExplanationLease, progress: ExplanationProgress | null): Promise<boolean>;

  /** Closes the question, if the lease is still held. */
  finish(lease: ExplanationLease, closing: ExplanationClosing): Promise<boolean>;

  /** Puts the question back without counting the attempt (orderly stop of a worker). */
  giveBack(lease: ExplanationLease): Promise<boolean>;
}
