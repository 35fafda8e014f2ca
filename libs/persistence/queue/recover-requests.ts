import { randomUUID } from 'node:crypto';
import type { EntityManager } from 'typeorm';
import { mostAttempts } from '#planning/lease-timing.js';
import type { RecoveredSolve } from '#planning/ports/solve-queue.js';
import { SolveRequestEntity } from '../entities/solve-request.entity.js';
import { cancelledUnsolved } from './cancel-request.js';
import { closingColumns, leaseless } from './closing-columns.js';
import type { JobBoard } from './job-board.js';
import { lostWorkerProblem } from './lost-worker-problem.js';

/** A waiting request this old should have its job; younger ones may be on their way in. */
const repostAfter = '1 minute';
const repostAtMost = 20;

/** Frees or closes each request whose worker has not renewed its lease in time. */
export async function recoverLapsed(
  manager: EntityManager,
  jobs: JobBoard,
  lapsesAfterMilliseconds: number,
): Promise<RecoveredSolve[]> {
  const lapsed = await manager
    .createQueryBuilder(SolveRequestEntity, 'request')
    .where(`request.state = 'solving'`)
    .andWhere(`request.lease_renewed_at < now() - :lapse * interval '1 millisecond'`)
    .setParameters({ lapse: lapsesAfterMilliseconds })
    .setLock('pessimistic_write')
    .setOnLocked('skip_locked')
    .getMany();
  const recovered: RecoveredSolve[] = [];
  for (const row of lapsed) recovered.push(await recoverOne(manager, jobs, row));
  return recovered;
}

async function recoverOne(
  manager: EntityManager,
  jobs: JobBoard,
  row: SolveRequestEntity,
): Promise<RecoveredSolve> {
  const { id, jobId } = row;
  if (!row.cancelWanted && row.attempts < mostAttempts) {
    const waiting = { ...leaseless, state: 'queued', progress: null } as const;
    await manager.update(SolveRequestEntity, { id }, waiting);
    await jobs.retry(manager, jobId);
    return { requestId: id, became: 'queued' };
  }
  const closing = row.cancelWanted
    ? cancelledUnsolved
    : ({ kind: 'failed', problem: lostWorkerProblem(row.attempts) } as const);
  await manager.update(SolveRequestEntity, { id }, closingColumns(closing, new Date()));
  await jobs.cancel(manager, jobId);
  return { requestId: id, became: row.cancelWanted ? 'cancelled' : 'failed' };
}

/** The queue's upkeep may drop an old job; its request must not wait for ever. */
export async function repostLostJobs(manager: EntityManager, jobs: JobBoard): Promise<void> {
  const waiting = await manager
    .createQueryBuilder(SolveRequestEntity, 'request')
    .where(`request.state = 'queued' AND request.requested_at < now() - interval '${repostAfter}'`)
    .orderBy('request.requestedAt')
    .limit(repostAtMost)
    .setLock('pessimistic_write')
    .setOnLocked('skip_locked')
    .getMany();
  for (const { id, jobId } of waiting) {
    if (await jobs.isWaiting(manager, jobId)) continue;
    const next = randomUUID();
    await manager.update(SolveRequestEntity, { id }, { jobId: next });
    await jobs.post(manager, { id: next, requestId: id });
  }
}
