import { randomBytes } from 'node:crypto';
import type { AddressInfo } from 'node:net';
import { Client } from 'pg';
import { inject } from 'vitest';
import { serveClients } from '#persistence/embedded/wire/wire-server.js';
import type { DatabaseServer } from './database-servers.js';
import { emptyEmbeddedStore } from './embedded-store.js';

/** A kind of database that a test file is to pass on. */
export interface TestDatabase {
  /** For the title of the tests: 'embedded store', 'PostgreSQL in a container' ... */
  readonly name: DatabaseServer['name'];
  /** Makes an empty database that no other test file shares. */
  readonly open: () => Promise<OpenDatabase>;
}

export interface OpenDatabase {
  /** The DATABASE_URL of the empty database. */
  readonly url: string;
  /** Removes it. All connections to it may be cut. */
  readonly close: () => Promise<void>;
}

/**
 * The databases to test on, for `describe.each`:
 *
 *     describe.each(databasesUnderTest())('plans on $name', (database) => {
 *       let store: OpenDatabase;
 *       beforeAll(async () => { store = await database.open(); });
 *       afterAll(() => store.close());
 */
export function databasesUnderTest(): readonly TestDatabase[] {
  return inject('databaseServers').map(({ name, url }) => ({
    name,
    open: () => (url === undefined ? openEmbedded() : createDatabase(url)),
  }));
}

/** A store in memory behind a socket of its own, as the embedded store of the program is. */
async function openEmbedded(): Promise<OpenDatabase> {
  const db = await emptyEmbeddedStore();
  const clients = await serveClients({
    backend: db,
    listen: { host: '127.0.0.1', port: 0 },
    onBroken: console.error,
  });
  const { port } = clients.server.address() as AddressInfo;
  return {
    url: `postgres://postgres@127.0.0.1:${port}/postgres`,
    close: async () => {
      await clients.close();
      await db.close();
    },
  };
}

async function createDatabase(serverUrl: string): Promise<OpenDatabase> {
  const name = `test_${randomBytes(8).toString('hex')}`;
  await runOn(serverUrl, `CREATE DATABASE ${name}`);
  const url = new URL(serverUrl);
  url.pathname = `/${name}`;
  return {
    url: url.href,
    close: () => runOn(serverUrl, `DROP DATABASE ${name} WITH (FORCE)`),
  };
}

async function runOn(url: string, sql: string): Promise<void> {
  const client = new Client({ connectionString: url });
  await client.connect();
  try {
    await client.query(sql);
  } finally {
    await client.end();
  }
}
