import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

/** The folder of package.json, whatever folder the command was given in. */
export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Says one line on standard error. */
export function say(line) {
  process.stderr.write(`${line}\n`);
}

/** Says what went wrong and ends the process with code 1. */
export function fail(line) {
  say(line);
  process.exit(1);
}

/**
 * Runs a command of the set-up and keeps its output back unless it fails.
 * Returns whether it ended well; on failure the output is on standard error.
 */
export function runQuietly(command, args) {
  const { status, error, stdout, stderr } = spawnSync(command, args, {
    cwd: root,
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  if (status === 0) return true;
  say(`${error?.message ?? ''}${stdout ?? ''}${stderr ?? ''}`.trim());
  return false;
}

/** Seconds since a `performance.now()` reading, to one decimal. */
export function secondsSince(start) {
  return `${((performance.now() - start) / 1000).toFixed(1)} s`;
}
