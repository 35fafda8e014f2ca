import type { CampusSummaryReply } from '#contracts/http/campuses.js';
import type { ExplanationReply } from '#contracts/http/explanations.js';
import type { PlanSummaryReply } from '#contracts/http/plans.js';
import type { SolveReply } from '#contracts/http/solves.js';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { smallFile } from '../small-campus.js';

/** What the fake api holds; a test changes it while the page is open. */
export interface Holdings {
  campuses: CampusSummaryReply[];
  /** The campus file, the same for every campus. */
  file: object;
  /** Plans of every campus, newest first. */
  plans: HeldPlan[];
  /** Newest first. */
  solves: SolveReply[];
  /** Questions asked of plans, newest first. */
  explanations: ExplanationReply[];
  /** Paths that answer with a problem reply instead. */
  refusals: Map<string, { status: number; body: unknown }>;
  /** Paths that are never answered. */
  silent: Set<string>;
  /** Called when a solve is asked to stop. */
  onCancel: (solveId: string) => void;
}

export interface HeldPlan {
  readonly summary: PlanSummaryReply;
  readonly overview: PlanOverview;
}

export const CAMPUS_ID = '6d8f5c0e-43f0-4d52-9a51-0c7a4d1b0001';
const SOLVED_AT = '2027-09-01T15:00:00Z';

export function emptyHoldings(): Holdings {
  return {
    campuses: [],
    file: smallFile(),
    plans: [],
    solves: [],
    explanations: [],
    refusals: new Map(),
    silent: new Set(),
    onCancel: () => undefined,
  };
}

export function heldCampus(): CampusSummaryReply {
  return { id: CAMPUS_ID, name: 'Tamarack Vale University', version: 1, savedAt: SOLVED_AT };
}

/** Ids are told apart by their last digits: `planId(2)`. */
export const planId = (number: number): string => idOf('aaaa', number);
export const solveId = (number: number): string => idOf('bbbb', number);

const idOf = (group: string, number: number): string =>
  `6d8f5c0e-43f0-4d52-${group}-${String(number).padStart(12, '0')}`;

export function heldPlan(number: number, overview: PlanOverview): HeldPlan {
  return {
    summary: {
      id: planId(number),
      campusId: CAMPUS_ID,
      campusVersion: 1,
      seed: 1,
      solverVersion: 'none: made for tests of the page',
      limits: { seconds: 60, work: null, gap: null },
      ending: 'time-limit',
      origin: 'solved',
      solvedAt: SOLVED_AT,
    },
    overview,
  };
}

export function heldSolve(number: number, change: Partial<SolveReply> = {}): SolveReply {
  return {
    id: solveId(number),
    campusId: CAMPUS_ID,
    campusVersion: 1,
    seed: 1,
    limits: { seconds: 60, work: null, gap: null },
    startFromPlan: null,
    broughtPlan: null,
    state: 'queued',
    progress: null,
    attempts: 0,
    cancelWanted: false,
    planId: null,
    ending: null,
    conflict: [],
    problem: null,
    requestedAt: SOLVED_AT,
    startedAt: null,
    finishedAt: null,
    ...change,
  };
}

/** The brief as a plan's list of documents has it. */
export function heldBrief(id: string) {
  const fileName = 'administration-brief.pdf';
  const path = `/api/plans/${id}/documents/${fileName}`;
  return {
    kind: 'administration-brief',
    site: null,
    title: 'Administration brief',
    fileName,
    path,
  };
}

export type ExplanationSubject = Pick<ExplanationReply, 'planId' | 'campusId' | 'campusVersion'>;

export function subjectOfPlan(id: string): ExplanationSubject {
  return { planId: id, campusId: null, campusVersion: null };
}

/** A question that was just asked. */
export function heldExplanation(
  about: ExplanationSubject,
  question: ExplanationReply['question'],
): ExplanationReply {
  return {
    ...{ id: idOf('cccc', 1), ...about, question, seconds: 28, state: 'queued' },
    ...{ progress: null, answer: null, problem: null, attempts: 0 },
    ...{ askedAt: SOLVED_AT, finishedAt: null },
  };
}
