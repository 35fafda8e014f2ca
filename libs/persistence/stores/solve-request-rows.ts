import type { Problem } from '#domain/problem.js';
import type { NewSolveRequest } from '#planning/ports/solve-queue.js';
import type { SolveRequest, SolveState } from '#planning/solve-request.js';
import type { SolveRequestEntity } from '../entities/solve-request.entity.js';
import { toText } from './json-text.js';
import { limitsColumns, limitsOf } from './limits-columns.js';
import { solveEndingOf } from './solve-ending-column.js';

export function solveRequestOf(row: SolveRequestEntity): SolveRequest {
  const { id, campusId, campusVersion, seed, attempts, cancelWanted, planId } = row;
  const { requestedAt, startedAt, finishedAt } = row;
  return {
    ...{ id, campusId, campusVersion, seed, attempts, cancelWanted, planId },
    ...{ requestedAt, startedAt, finishedAt },
    limits: limitsOf(row),
    startFromPlan: row.startFromPlan,
    broughtPlan: row.broughtName,
    // A constraint holds the states to these.
    state: row.state as SolveState,
    progress: row.progress,
    ending: row.ending === null ? null : solveEndingOf(row.ending),
    conflict: row.conflict,
    problem: row.problem === null ? null : (JSON.parse(row.problem) as Problem),
  };
}

export function newSolveRequestRow(
  { brought, limits, startFromPlan, ...solvedFrom }: NewSolveRequest,
  keys: { id: string; jobId: string; requestedAt: Date },
): SolveRequestEntity {
  return {
    ...solvedFrom,
    ...keys,
    ...limitsColumns(limits),
    startFromPlan: startFromPlan ?? null,
    broughtName: brought?.name ?? null,
    broughtPlan: brought ? toText(brought.document) : null,
    state: 'queued',
    attempts: 0,
    cancelWanted: false,
    leaseHolder: null,
    leaseRenewedAt: null,
    progress: null,
    planId: null,
    ending: null,
    conflict: [],
    problem: null,
    startedAt: null,
    finishedAt: null,
  };
}
