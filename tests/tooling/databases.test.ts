import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { databasesUnderTest, type OpenDatabase } from '../support/databases.js';

async function answer(url: string, sql: string): Promise<unknown[]> {
  const client = new Client({ connectionString: url });
  await client.connect();
  try {
    const { rows } = await client.query<{ answer: unknown }>(sql);
    return rows.map((row) => row.answer);
  } finally {
    await client.end();
  }
}

describe.each(databasesUnderTest())('a test database: $name', (database) => {
  let first: OpenDatabase;
  let second: OpenDatabase;

  beforeAll(async () => {
    first = await database.open();
    second = await database.open();
  });
  afterAll(async () => {
    await first.close();
    await second.close();
  });

  test('is PostgreSQL 15 or newer', async () => {
    const [version] = await answer(first.url, "SELECT current_setting('server_version') AS answer");
    expect(Number.parseInt(String(version), 10)).toBeGreaterThanOrEqual(15);
  });

  test('is shared with no other file', async () => {
    await answer(first.url, 'CREATE TABLE only_here AS SELECT 1 AS answer');
    const tables = "SELECT tablename AS answer FROM pg_tables WHERE tablename = 'only_here'";
    expect(await answer(first.url, tables)).toEqual(['only_here']);
    expect(await answer(second.url, tables)).toEqual([]);
  });
});
