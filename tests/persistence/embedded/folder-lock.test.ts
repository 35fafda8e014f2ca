import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { lockFolder } from '#persistence/embedded/folder-lock.js';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'campus-plan-lock-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** Another process that locks the folder and stays. */
async function otherProcess(): Promise<{ pid: number; kill: () => Promise<void> }> {
  const script = `
    import { lockFolder } from '#persistence/embedded/folder-lock.js';
    console.log(lockFolder(process.argv[1]).kind);
    setInterval(() => undefined, 1000);`;
  const child = spawn(process.execPath, ['--input-type=module', '-e', script, folder]);
  const said = await new Promise<string>((resolve) =>
    child.stdout.once('data', (data: Buffer) => resolve(data.toString().trim())),
  );
  expect(said).toBe('locked');
  const exit = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const kill = (): Promise<void> => {
    child.kill('SIGKILL');
    return exit;
  };
  return { pid: child.pid!, kill };
}

test('a folder that another process holds is refused, and its holder named', async () => {
  const other = await otherProcess();
  expect(lockFolder(folder)).toMatchObject({
    kind: 'held-by-another',
    holder: { pid: other.pid, since: expect.stringMatching(/^\d{4}-/) },
  });
  await other.kill();
});

test('a holder that was killed holds nothing any more', async () => {
  const other = await otherProcess();
  await other.kill();
  const lock = lockFolder(folder);
  expect(lock.kind).toBe('locked');
  if (lock.kind === 'locked') lock.release();
});

test('within one process too the second is refused, until the first lets go', () => {
  const first = lockFolder(folder);
  expect(lockFolder(folder)).toMatchObject({ holder: { pid: process.pid } });
  if (first.kind === 'locked') first.release();
  expect(lockFolder(folder).kind).toBe('locked');
});

test('what a lock file says does not count, only whether it is held', () => {
  writeFileSync(join(folder, 'lock'), '{"pid": 1, "since": "2020"}');
  expect(lockFolder(folder).kind).toBe('locked');
});
