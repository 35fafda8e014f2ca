import { chmodSync, existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
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

/** A new database is made beside its place and moved there whole, so no kill leaves half of one. */
async function openData(folder: string): Promise<PGlite> {
  if (!existsSync(folder)) {
    const unfinished = `${folder}.new`;
    rmSync(unfinished, { recursive: true, force: true });
    const db = await PGlite.create(unfinished);
    await db.close();
    renameSync(unfinished, folder);
  }
  return PGlite.create(folder);
}
