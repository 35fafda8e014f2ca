import type { Pool } from 'pg';
import PgBoss from 'pg-boss';
import type { DataSource, EntityManager } from 'typeorm';
import { PostgresDriver } from 'typeorm/driver/postgres/PostgresDriver.js';
import { retrying } from '../retrying.js';

const queueName = 'solve';

const queueOptions: PgBoss.Queue = {
  name: queueName,
  retryLimit: 1_000,
  // Far above the longest solve: a live solve must never be handed to a second worker.
  expireInSeconds: 23 * 60 * 60,
  retentionMinutes: 365 * 24 * 60,
};

/** What a job carries: the request is in its own table. */
interface SolveJobData {
  readonly requestId: string;
}

/**
 * The job queue. Every method works inside the caller's transaction, so a job and the request that
 * it stands for change together. Retries are counted by the request, not here: hence the high limit.
 */
export class JobBoard {
  private constructor(private readonly boss: PgBoss) {}

  /** Creates the queue's own tables where they are missing. `onError` hears of failed upkeep. */
  static async open(source: DataSource, onError: (error: unknown) => void): Promise<JobBoard> {
    const boss = new PgBoss({ db: poolOf(source), schedule: false });
    boss.on('error', onError);
    await boss.start();
    // Several processes that start at once make the queue's table at once, and may lock each other out.
    await retrying('repeatable', () => boss.createQueue(queueName, queueOptions));
    return new JobBoard(boss);
  }

  async post(manager: EntityManager, job: { id: string; requestId: string }): Promise<void> {
    const data: SolveJobData = { requestId: job.requestId };
    await this.boss.send(queueName, data, { id: job.id, db: within(manager) });
  }

  /** The oldest waiting job, now marked as taken. */
  async take(manager: EntityManager): Promise<{ id: string; requestId: string } | null> {
    const [job] = await this.boss.fetch<SolveJobData>(queueName, { db: within(manager) });
    return job ? { id: job.id, requestId: job.data.requestId } : null;
  }

  async complete(manager: EntityManager, id: string): Promise<void> {
    await this.boss.complete(queueName, id, {}, { db: within(manager) });
  }

  /** Fails a taken job, which puts it back to wait at its old place. */
  async retry(manager: EntityManager, id: string): Promise<void> {
    await this.boss.fail(queueName, id, { reason: 'worker gone' }, { db: within(manager) });
  }

  async cancel(manager: EntityManager, id: string): Promise<void> {
    await this.boss.cancel(queueName, id, { db: within(manager) });
  }

  /** True when a worker can still take the job. */
  async isWaiting(manager: EntityManager, id: string): Promise<boolean> {
    const job = await this.boss.getJobById(queueName, id, {
      db: within(manager),
      includeArchive: false,
    });
    return job?.state === 'created' || job?.state === 'retry';
  }

  async close(): Promise<void> {
    await this.boss.stop({ graceful: false, close: false });
  }
}

/** One pool for a whole process: the queue's own statements use the connections of the stores. */
function poolOf(source: DataSource): PgBoss.Db {
  if (!(source.driver instanceof PostgresDriver)) throw new TypeError('the queue needs PostgreSQL');
  const pool = source.driver.master as Pool;
  return { executeSql: (text, values) => pool.query(text, values) };
}

function within(manager: EntityManager): PgBoss.Db {
  const runner = manager.queryRunner;
  if (runner === undefined) throw new TypeError('a job changes only inside a transaction');
  return {
    executeSql: async (text, values) => {
      const { records } = await runner.query(text, values, true);
      return { rows: records };
    },
  };
}
