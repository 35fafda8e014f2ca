import { spawnSync } from 'node:child_process';
import { closeSync, constants, ftruncateSync, openSync, readFileSync, writeSync } from 'node:fs';
import { join } from 'node:path';

/** Who has the store open, for the message to whoever comes second. */
export interface LockHolder {
  readonly pid: number;
  readonly since: string;
}

export type LockOutcome =
  | { readonly kind: 'locked'; readonly release: () => void }
  | { readonly kind: 'held-by-another'; readonly holder: LockHolder | null };

/** `O_EXLOCK` of the BSD family, macOS among them: the file opens only if nobody else holds its lock. */
const openExclusive = 0x20;

/**
 * Locks a folder through its file `lock`. The operating system holds the lock for this process and
 * drops it with the process, however that ends; so a leftover file means nothing, and no check of
 * process ids is needed. What the file says is only for people.
 */
export function lockFolder(folder: string): LockOutcome {
  const path = join(folder, 'lock');
  const file = process.platform === 'linux' ? openAndFlock(path) : openWithLock(path);
  if (file === null) return { kind: 'held-by-another', holder: readHolder(path) };
  const holder: LockHolder = { pid: process.pid, since: new Date().toISOString() };
  ftruncateSync(file);
  writeSync(file, JSON.stringify(holder), 0);
  return { kind: 'locked', release: () => closeSync(file) };
}

/**
 * Linux: a lock belongs to the open file, which the `flock` command shares with us while it runs
 * and we keep when it has ended.
 */
function openAndFlock(path: string): number | null {
  const file = openSync(path, constants.O_RDWR | constants.O_CREAT, 0o600);
  const { error, status } = spawnSync('flock', ['-x', '-n', '3'], {
    stdio: ['ignore', 'ignore', 'inherit', file],
  });
  if (status === 0) return file;
  closeSync(file);
  if (error) throw new Error('the command flock (package util-linux) is needed', { cause: error });
  return null;
}

function openWithLock(path: string): number | null {
  const flags = constants.O_RDWR | constants.O_CREAT | constants.O_NONBLOCK | openExclusive;
  try {
    return openSync(path, flags, 0o600);
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'EAGAIN') return null;
    throw error;
  }
}

function readHolder(path: string): LockHolder | null {
  try {
    const { pid, since } = JSON.parse(readFileSync(path, 'utf8')) as Partial<LockHolder>;
    return typeof pid === 'number' && typeof since === 'string' ? { pid, since } : null;
  } catch {
    return null;
  }
}
