import type { EntityManager } from 'typeorm';
import type { CancelOutcome } from '#planning/ports/solve-queue.js';
import { isFinal, type SolveState } from '#planning/solve-request.js';
import { SolveRequestEntity } from '../entities/solve-request.entity.js';
import { closingColumns } from './closing-columns.js';
import type { JobBoard } from './job-board.js';

/** The closing of a request that nobody works on. */
export const cancelledUnsolved = {
  kind: 'without-plan',
  ending: 'cancelled-without-plan',
  conflict: [],
} as const;

/** Cancels a waiting request at once; leaves a note for the worker of a running one. */
export async function cancelRequest(
  manager: EntityManager,
  jobs: JobBoard,
  id: string,
): Promise<CancelOutcome> {
  const row = await manager.findOne(SolveRequestEntity, {
    where: { id },
    lock: { mode: 'pessimistic_write' },
  });
  if (row === null) return 'unknown-request';
  if (isFinal(row.state as SolveState)) return 'already-final';
  if (row.state === 'solving') {
    await manager.update(SolveRequestEntity, { id }, { cancelWanted: true });
    return 'cancel-wanted';
  }
  const closed = { cancelWanted: true, ...closingColumns(cancelledUnsolved, new Date()) };
  await manager.update(SolveRequestEntity, { id }, closed);
  await jobs.cancel(manager, row.jobId);
  return 'cancelled';
}
