import type { SolveReply } from '#contracts/http/solves.js';
import type { SolveRequest } from '#planning/solve-request.js';
import { ProblemError } from '../problems/problem-error.js';

export function solveReplyOf(request: SolveRequest): SolveReply {
  const { limits, progress, problem, conflict, requestedAt, startedAt, finishedAt } = request;
  return {
    ...request,
    limits: { ...limits },
    progress: progress && { ...progress },
    problem: problem && { ...problem },
    conflict: conflict.map((member) => ({ ...member })),
    requestedAt: requestedAt.toISOString(),
    startedAt: startedAt && startedAt.toISOString(),
    finishedAt: finishedAt && finishedAt.toISOString(),
  };
}

export function unknownSolve(): ProblemError {
  return new ProblemError('unknown-solve', 'GET /api/campuses/ID/solves lists those of a campus.');
}
