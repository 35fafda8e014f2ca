import { PostgreSqlContainer } from '@testcontainers/postgresql';
import type { TestProject } from 'vitest/node';
import { dockerAnswers } from './docker.js';

/** Where the database tests of this run find a server. The embedded store needs no address. */
export interface DatabaseServer {
  readonly name: 'embedded store' | 'server of TEST_DATABASE_URL' | 'PostgreSQL in a container';
  /** Address of a database whose user may create databases; the embedded store has none. */
  readonly url?: string;
}

declare module 'vitest' {
  interface ProvidedContext {
    /** Every database that the tests of this run are to pass on. */
    readonly databaseServers: readonly DatabaseServer[];
  }
}

/**
 * Finds the databases once per run, says which they are, and stops what it started.
 * `TEST_DATABASES=embedded` leaves all but the embedded store out, for a quick run.
 */
export default async function databaseServers(project: TestProject): Promise<() => Promise<void>> {
  const container = await startContainer();
  const servers = [...namedServers(), ...(container?.servers ?? [])];
  project.provide('databaseServers', servers);
  console.log(`Database tests run on: ${servers.map(({ name }) => name).join(', ')}.`);
  return async () => {
    await container?.stop();
  };
}

const embeddedOnly = process.env['TEST_DATABASES'] === 'embedded';

function namedServers(): readonly DatabaseServer[] {
  const url = process.env['TEST_DATABASE_URL'];
  const embedded: DatabaseServer = { name: 'embedded store' };
  if (embeddedOnly || url === undefined || url === '') return [embedded];
  return [embedded, { name: 'server of TEST_DATABASE_URL', url }];
}

interface StartedContainer {
  readonly servers: readonly DatabaseServer[];
  readonly stop: () => Promise<unknown>;
}

/** One server in a container for the whole run, where a Docker engine answers. */
async function startContainer(): Promise<StartedContainer | undefined> {
  if (embeddedOnly || !(await dockerAnswers())) return undefined;
  const started = await new PostgreSqlContainer('postgres:17-alpine').start();
  return {
    servers: [{ name: 'PostgreSQL in a container', url: started.getConnectionUri() }],
    stop: () => started.stop(),
  };
}
