import { createHash } from 'node:crypto';
import { chmodSync, lstatSync, mkdirSync } from 'node:fs';
import { tmpdir, userInfo } from 'node:os';
import { join } from 'node:path';

/** PostgreSQL clients add this name to the folder that they are given as their host. */
const socketName = '.s.PGSQL.5432';

/** The shortest limit on a socket's path among the systems we run on (macOS; Linux has 107). */
const longestSocketPath = 103;

export interface SocketAddress {
  readonly path: string;
  /** What `DATABASE_URL` would be. */
  readonly url: string;
}

/**
 * Where the store of a folder listens: a Unix socket, since its file permissions keep other people
 * of the machine out and no port can be taken. The same folder always gives the same address, so
 * clients find a store again that was restarted.
 */
export function socketAddressOf(storeFolder: string): SocketAddress {
  const inside = join(storeFolder, socketName);
  const folder = inside.length <= longestSocketPath ? storeFolder : shortFolderFor(storeFolder);
  return {
    path: join(folder, socketName),
    url: `postgres://postgres@localhost/postgres?host=${encodeURIComponent(folder)}`,
  };
}

function shortFolderFor(storeFolder: string): string {
  const { uid, username } = userInfo();
  const name = createHash('sha256').update(`${username} ${storeFolder}`).digest('hex').slice(0, 16);
  const folder = join(tmpdir(), `campus-plan-${name}`);
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const found = lstatSync(folder);
  if (!found.isDirectory() || found.uid !== uid) {
    throw new Error(`${folder} belongs to someone else; set TMPDIR to a folder of your own`);
  }
  chmodSync(folder, 0o700);
  return folder;
}
