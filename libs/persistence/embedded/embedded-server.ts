import { chmodSync, existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { PGlite } from '@electric-sql/pglite';
import { PGLiteSocketServer } from '@electric-sql/pglite-socket';
import { lockFolder, type LockHolder } from './folder-lock.js';
import { socketAddressOf } from './socket-address.js';

/** Well above what an api and a few workers open (four each). */
const mostConnections = 64;

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
 */
export async function openEmbeddedServer(folder: string): Promise<ServerOutcome> {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  chmodSync(folder, 0o700);
  const lock = lockFolder(folder);
  if (lock.kind === 'held-by-another') return lock;
  const address = socketAddressOf(folder);
  const db = await openData(join(folder, 'data'));
  // A socket that a killed store left behind: only the holder of the lock may clear it away.
  rmSync(address.path, { force: true });
  const sockets = new PGLiteSocketServer({
    db,
    path: address.path,
    maxConnections: mostConnections,
  });
  await sockets.start();
  const close = async (): Promise<void> => {
    await sockets.stop();
    await db.close();
    rmSync(address.path, { force: true });
    lock.release();
  };
  return { kind: 'open', server: { url: address.url, close } };
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
