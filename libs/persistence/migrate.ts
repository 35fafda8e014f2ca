import { MigrationExecutor, type DataSource } from 'typeorm';

/** Any number, the same in every process of this program: who holds it runs the migrations. */
const migrationLock = 7_034_201_955;

/**
 * Brings the tables up to date. Several processes may try at once: the first takes the lock, the
 * others wait until its transaction ends and then find nothing left to do.
 */
export async function migrate(source: DataSource): Promise<void> {
  const runner = source.createQueryRunner();
  try {
    await runner.startTransaction();
    await runner.query('SELECT pg_advisory_xact_lock($1)', [migrationLock]);
    await new MigrationExecutor(source, runner).executePendingMigrations();
    await runner.commitTransaction();
  } catch (error) {
    if (runner.isTransactionActive) await runner.rollbackTransaction();
    throw error;
  } finally {
    await runner.release();
  }
}
