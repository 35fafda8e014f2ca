import { randomUUID } from 'node:crypto';
import type { EntityManager } from 'typeorm';
import type {
  CancelOutcome,
  LeaseState,
  NewSolveRequest,
  RecoveredSolve,
  SolveClosing,
  SolveLease,
  SolveQueue,
  TakenSolve,
} from '#planning/ports/solve-queue.js';
import type { SolveProgress, SolveRequest } from '#planning/solve-request.js';
import type { Database } from '../database.js';
import { PlanEntity } from '../entities/plan.entity.js';
import { SolveRequestEntity } from '../entities/solve-request.entity.js';
import { fromText } from '../stores/json-text.js';
import { planRow } from '../stores/plan-rows.js';
import { newSolveRequestRow, solveRequestOf } from '../stores/solve-request-rows.js';
import { cancelRequest } from './cancel-request.js';
import { closingColumns, leaseless } from './closing-columns.js';
import type { JobBoard } from './job-board.js';
import { recoverLapsed, repostLostJobs } from './recover-requests.js';

type ClosingWithPlan = Extract<SolveClosing, { readonly plan: unknown }>;

/** The queue of solves in PostgreSQL: the request is the truth, its job makes a worker look. */
export class PostgresSolveQueue implements SolveQueue {
  constructor(
    private readonly database: Database,
    private readonly jobs: JobBoard,
  ) {}

  enqueue(wish: NewSolveRequest): Promise<SolveRequest> {
    const keys = { id: randomUUID(), jobId: randomUUID(), requestedAt: new Date() };
    const row = newSolveRequestRow(wish, keys);
    return this.database.change('repeatable', async (manager) => {
      await manager
        .createQueryBuilder()
        .insert()
        .into(SolveRequestEntity)
        .values(row)
        .orIgnore()
        .execute();
      await this.jobs.post(manager, { id: keys.jobId, requestId: keys.id });
      return solveRequestOf(row);
    });
  }

  take(): Promise<TakenSolve | null> {
    return this.database.change('once', async (manager) => {
      for (;;) {
        const job = await this.jobs.take(manager);
        if (job === null) return null;
        const taken = await claim(manager, job);
        if (taken !== null) return taken;
        await this.jobs.complete(manager, job.id);
      }
    });
  }

  renew(lease: SolveLease, progress: SolveProgress | null): Promise<LeaseState> {
    return this.database.read(async (manager) => {
      const renewed = await manager
        .createQueryBuilder()
        .update(SolveRequestEntity)
        .set({ leaseRenewedAt: () => 'now()', ...(progress && { progress: { ...progress } }) })
        .where(heldBy(lease))
        .returning('cancel_wanted')
        .execute();
      const [row] = renewed.raw as { cancel_wanted: boolean }[];
      if (row === undefined) return 'lost';
      return row.cancel_wanted ? 'cancel-wanted' : 'held';
    });
  }

  finish(lease: SolveLease, closing: SolveClosing): Promise<boolean> {
    return this.database.change('repeatable', async (manager) => {
      const row = await lockHeld(manager, lease);
      if (row === null) return false;
      if ('plan' in closing) await storePlan(manager, closing);
      await manager.update(SolveRequestEntity, heldBy(lease), closingColumns(closing, new Date()));
      await this.jobs.complete(manager, row.jobId);
      return true;
    });
  }

  giveBack(lease: SolveLease): Promise<boolean> {
    return this.database.change('repeatable', async (manager) => {
      const row = await lockHeld(manager, lease);
      if (row === null) return false;
      const attempts = row.attempts - 1;
      const waiting = { ...leaseless, state: 'queued', attempts, progress: null } as const;
      await manager.update(SolveRequestEntity, heldBy(lease), waiting);
      await this.jobs.retry(manager, row.jobId);
      return true;
    });
  }

  cancel(requestId: string): Promise<CancelOutcome> {
    return this.database.change('repeatable', (manager) =>
      cancelRequest(manager, this.jobs, requestId),
    );
  }

  recover(lapsesAfterMilliseconds: number): Promise<readonly RecoveredSolve[]> {
    return this.database.change('repeatable', async (manager) => {
      const recovered = await recoverLapsed(manager, this.jobs, lapsesAfterMilliseconds);
      await repostLostJobs(manager, this.jobs);
      return recovered;
    });
  }

  async ping(): Promise<void> {
    await this.database.source.query('SELECT 1');
  }
}

function heldBy({ requestId, holder }: SolveLease): { id: string; leaseHolder: string } {
  return { id: requestId, leaseHolder: holder };
}

/** Locks the row, so that a sweep cannot take the lease while its holder stores a result. */
function lockHeld(manager: EntityManager, lease: SolveLease): Promise<SolveRequestEntity | null> {
  return manager.findOne(SolveRequestEntity, {
    where: heldBy(lease),
    lock: { mode: 'pessimistic_write' },
  });
}

/** The id of a plan that came in by a bundle is of what it says, so it may be here already. */
async function storePlan(manager: EntityManager, closing: ClosingWithPlan): Promise<void> {
  const insert = manager.createQueryBuilder().insert().into(PlanEntity);
  const valued = insert.values(planRow(closing.plan, new Date()));
  await (closing.kind === 'brought-in' ? valued.orIgnore() : valued).execute();
}

/** Takes the lease of the job's request. Null: the request no longer waits for this job. */
async function claim(
  manager: EntityManager,
  job: { id: string; requestId: string },
): Promise<TakenSolve | null> {
  const holder = randomUUID();
  const claimed = await manager
    .createQueryBuilder()
    .update(SolveRequestEntity)
    .set({
      state: 'solving',
      leaseHolder: holder,
      leaseRenewedAt: () => 'now()',
      startedAt: () => 'COALESCE(started_at, now())',
      attempts: () => 'attempts + 1',
    })
    .where({ id: job.requestId, jobId: job.id, state: 'queued' })
    .execute();
  if (claimed.affected !== 1) return null;
  const row = await manager
    .createQueryBuilder(SolveRequestEntity, 'request')
    .addSelect('request.broughtPlan')
    .where({ id: job.requestId })
    .getOneOrFail();
  const brought = row.broughtPlan === null ? null : fromText(row.broughtPlan);
  return { lease: { requestId: row.id, holder }, request: solveRequestOf(row), brought };
}
