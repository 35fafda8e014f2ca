import type { AddressInfo } from 'node:net';
import { PGlite } from '@electric-sql/pglite';
import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { serveClients, type WireServer } from '#persistence/embedded/wire/wire-server.js';

describe('many clients of the one embedded session', () => {
  let db: PGlite;
  let clients: WireServer;
  const broken: unknown[] = [];

  beforeAll(async () => {
    db = await PGlite.create();
    clients = await serveClients({
      backend: db,
      listen: { host: '127.0.0.1', port: 0 },
      onBroken: (error) => broken.push(error),
      longestSilence: 300,
    });
    const setUp = await connect();
    await setUp.query('CREATE TABLE item (id integer PRIMARY KEY, text text)');
    await setUp.end();
  });
  afterAll(async () => {
    expect(broken).toEqual([]);
    await clients.close();
    await db.close();
  });

  async function connect(): Promise<Client> {
    const { port } = clients.server.address() as AddressInfo;
    const client = new Client({ host: '127.0.0.1', port, user: 'postgres', database: 'postgres' });
    client.on('error', () => undefined);
    await client.connect();
    return client;
  }

  /** How a connection looks to the store when its process was killed. */
  function cut(client: Client): void {
    const { connection } = client as unknown as { connection: { stream: { destroy(): void } } };
    connection.stream.destroy();
  }

  async function count(client: Client): Promise<number> {
    const { rows } = await client.query<{ n: number }>('SELECT count(*)::int AS n FROM item');
    return rows[0]!.n;
  }

  test('the errors of one client never swallow what another asks', async () => {
    const failing = await Promise.all([connect(), connect()]);
    const working = await Promise.all([connect(), connect(), connect()]);
    const failures = failing.map(async (client) => {
      for (let n = 0; n < 60; n += 1) {
        const bad = n % 2 ? 'SELECT * FROM nothing WHERE id = $1' : 'SELECT 1 / ($1::int - 7)';
        await expect(client.query(bad, [7])).rejects.toThrow();
      }
    });
    const answers = working.map(async (client, who) => {
      for (let n = 0; n < 60; n += 1) {
        const { rows } = await client.query('SELECT $1::int AS who, $2::int AS n', [who, n]);
        expect(rows).toEqual([{ who, n }]);
      }
    });
    await Promise.all([...failures, ...answers]);
    await Promise.all([...failing, ...working].map((client) => client.end()));
  });

  test('a client that dies in a transaction leaves nothing behind and holds nobody up', async () => {
    const other = await connect();
    for (let round = 0; round < 20; round += 1) {
      const dying = await connect();
      void dying.query('BEGIN').catch(() => undefined);
      const insert = 'INSERT INTO item SELECT generate_series(1, $1::int)';
      void dying.query(insert, [200]).catch(() => undefined);
      await new Promise((resolve) => setTimeout(resolve, round % 7));
      cut(dying);
      expect(await count(other)).toBe(0);
    }
    await other.end();
  });

  test('a client that falls silent in a transaction is let go', async () => {
    const [silent, other] = await Promise.all([connect(), connect()]);
    await silent.query('BEGIN');
    await silent.query('INSERT INTO item VALUES (1)');
    expect(await count(other)).toBe(0);
    await expect(silent.query('COMMIT')).rejects.toThrow();
    await other.end();
  });

  test('a document of many megabytes goes in and comes back', async () => {
    const client = await connect();
    const text = 'lawn into garden '.repeat(700_000);
    await client.query('INSERT INTO item VALUES (2, $1)', [text]);
    const { rows } = await client.query<{ text: string }>('SELECT text FROM item WHERE id = 2');
    expect(rows[0]!.text === text).toBe(true);
    await client.query('DELETE FROM item');
    await client.end();
  });
});
