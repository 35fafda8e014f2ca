import { chmodSync, existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { PGlite } from '@electric-sql/pglite';
import { lockFolder, type LockHolder } from './folder-lock.js';
import { socketAddressOf } from './socket-address.js';
import { serveClients } from './wire/wire-server.js';

export interface EmbeddedServer {
  readonly url: string;
  close(): Promise<void>;
}

export type ServerOutcome =
  | { readonly kind: 'open'; readonly server: EmbeddedServer }
  | { readonly kind: 'held-by-another'; readonly holder: LockHolder | null };

/**
 * Opens the database in a folder and serves it to PostgreSQL clients. Two processes on one data
 * folder would damage it without a complaint, so the lock comes before everything else.
 * `onBroken` is told when the database failed in a way that only a new process can mend.
 */
export async function openEmbeddedServer(
  folder: string,
  onBroken: (error: unknown) => void,
): Promise<ServerOutcome> {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  chmodSync(folder, 0o700);
  const lock = lockFolder(folder);
  if (lock.kind === 'held-by-another') return lock;
  const { path, url } = socketAddressOf(folder);
  const db = await openData(join(folder, 'data'));
  // A socket that a killed store left behind: only the holder of the lock may clear it away.
  rmSync(path, { force: true });
  const clients = await serveClients({ backend: db, listen: { path }, onBroken });
  const close = async (): Promise<void> => {
    await clients.close();
    await db.close();
    rmSync(path, { force: true });
    lock.release();
  };
  return { kind: 'open', server: { url, close } };
}

/** Stands in the data folder from the moment in which the new database is whole. */
const wholeMark = 'campus-plan-store';

/** A process killed while it made a new database leaves a part of one; nobody was served from it yet. */
async function openData(folder: string): Promise<PGlite> {
  const mark = join(folder, wholeMark);
  if (!existsSync(mark)) rmSync(folder, { recursive: true, force: true });
  const db = await PGlite.create(folder);
  writeFileSync(mark, '');
  return db;
}
