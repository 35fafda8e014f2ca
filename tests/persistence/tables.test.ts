import { randomUUID } from 'node:crypto';
import type { DataSource } from 'typeorm';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { dataSourceFor } from '#persistence/data-source.js';
import { migrate } from '#persistence/migrate.js';
import { openStore, type OpenStore } from '#persistence/open-store.js';
import { databasesUnderTest, type OpenDatabase } from '../support/databases.js';

describe.each(databasesUnderTest())('tables on the $name', (kind) => {
  let database: OpenDatabase;
  let source: DataSource;
  let opened: readonly OpenStore[];

  beforeAll(async () => {
    database = await kind.open();
    opened = await Promise.all([1, 2, 3].map(() => openStore(database.url, console.error)));
    source = await dataSourceFor(database.url).initialize();
  });
  afterAll(async () => {
    await source.destroy();
    await Promise.all(opened.map((store) => store.close()));
    await database.close();
  });

  test('several processes that start at once bring the tables up to date once', async () => {
    await migrate(source);
    expect(await source.query('SELECT name FROM migrations')).toHaveLength(5);
    const { id } = await opened[0]!.campuses.add({ name: 'A', document: {} });
    expect(await opened[2]!.campuses.load(id)).not.toBeNull();
  });

  test('the entities say what the migrations made', async () => {
    const { upQueries } = await source.driver.createSchemaBuilder().log();
    const ours = upQueries.map(({ query }) => query).filter(changesAColumn);
    expect(ours).toEqual([]);
  });

  test('a saved version and a plan cannot be changed or deleted', async () => {
    const { campuses, queue } = opened[0]!;
    const { id } = await campuses.add({ name: 'A', document: {} });
    const limits = { seconds: 1, work: null, gap: null };
    await queue.enqueue({ campusId: id, campusVersion: 1, seed: 1, limits });
    const taken = await queue.take();
    const plan = {
      ...{ id: randomUUID(), campusId: id, campusVersion: 1, seed: 1, limits },
      ...{
        solverVersion: 'test',
        ending: 'proven' as const,
        origin: 'solved' as const,
        plan: {},
        overview: {},
      },
    };
    await queue.finish(taken!.lease, { kind: 'solved', ending: 'proven', plan });
    for (const table of ['plan', 'campus_version']) {
      const refused = `rows of ${table} are never changed or deleted`;
      await expect(source.query(`UPDATE ${table} SET document = '{}'`)).rejects.toThrow(refused);
      await expect(source.query(`DELETE FROM ${table}`)).rejects.toThrow(/never changed|violates/);
    }
  });

  test('the table itself refuses a request that is solving with no lease', async () => {
    await expect(source.query(`UPDATE solve_request SET state = 'solving'`)).rejects.toThrow(
      'check constraint',
    );
  });
});

/** Constraints and indexes are named by the migrations; types, columns and nulls must agree. */
function changesAColumn(query: string): boolean {
  return /ADD "|DROP COLUMN|ALTER COLUMN|CREATE TABLE/.test(query);
}
