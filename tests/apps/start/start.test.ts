import { spawn, spawnSync, type ChildProcess } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { freePort } from '#apps/api/free-port.js';
import { programs } from '../../support/processes/children.js';

const patience = 100_000;

interface Started {
  readonly process: ChildProcess;
  readonly output: () => string;
  /** Resolves when the output holds the text. */
  readonly says: (text: string) => Promise<void>;
  readonly exit: Promise<number | null>;
}

const running = new Set<ChildProcess>();

function start(folder: string, port: number): Started {
  const child = spawn(process.execPath, [programs.start, folder, String(port)]);
  let output = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream.on('data', (chunk: Buffer) => {
      output += chunk.toString();
    });
  }
  running.add(child);
  const exit = new Promise<number | null>((resolve) => child.on('exit', resolve));
  const says = (text: string) =>
    expect.poll(() => output, { timeout: patience, interval: 50 }).toContain(text);
  return { process: child, output: () => output, says, exit };
}

/** Ids of the child processes, from the system's list. */
function childrenOf(pid: number): number[] {
  if (existsSync('/proc/self/task')) {
    const ids = readFileSync(`/proc/${pid}/task/${pid}/children`, 'utf8');
    return ids.split(' ').filter(Boolean).map(Number);
  }
  const { stdout } = spawnSync('ps', ['-A', '-o', 'pid=,ppid='], { encoding: 'utf8' });
  const rows = stdout.split('\n').map((line) => line.trim().split(/\s+/).map(Number));
  return rows.flatMap(([id = 0, parent]) => (parent === pid ? [id] : []));
}

function isAlive(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch {
    return false;
  }
}

const allGone = (pids: readonly number[]) =>
  expect.poll(() => pids.filter(isAlive), { timeout: 20_000 }).toEqual([]);

/** One story, told in order: each test goes on from where the one before it left the folder. */
describe.sequential('npm start', () => {
  const folder = mkdtempSync(join(tmpdir(), 'campus-plan-start-'));
  let port: number;
  let taken: Server;

  beforeAll(async () => {
    port = await freePort(3_400, '127.0.0.1');
    taken = createServer().listen(port, '127.0.0.1');
  });
  afterAll(() => {
    taken.close();
    for (const child of running) child.kill('SIGKILL');
    rmSync(folder, { recursive: true, force: true });
  });

  test(
    'on an empty folder: loads the demo, solves, writes the documents, is ready, and Ctrl-C ends all of it',
    async () => {
      const first = start(folder, port);
      await first.says('\nready\n');
      expect(first.output()).toContain('Loaded Tamarack Vale, version 1.');
      const chosen = /Port (\d+) is taken, so (\d+) is used\./.exec(first.output());
      expect(chosen?.[1]).toBe(String(port));
      expect(first.output()).toMatch(/\d+ s, best plan so far .*, gap 10\.0 % \(benefit\)/);
      expect(first.output()).toContain('A verified plan (proven best):');
      expect(first.output()).toContain('Next: Tamarack Vale');
      const brief = join(folder, 'out', 'administration-brief.pdf');
      expect(first.output()).toContain(`In ${join(folder, 'out')}:\n  administration-brief.pdf\n`);
      expect(readFileSync(brief, 'utf8')).toContain('%PDF');
      const health = await fetch(`http://127.0.0.1:${chosen?.[2]}/api/health`);
      expect(await health.json()).toEqual({ status: 'ok' });

      const second = start(folder, port);
      expect(await second.exit).toBe(1);
      expect(second.output()).toMatch(/store in .* is already open by process \d+/);
      expect(second.output()).toContain('running already');

      const children = childrenOf(first.process.pid!);
      expect(children).toHaveLength(3);
      first.process.kill('SIGINT');
      expect(await first.exit).toBe(0);
      await allGone(children);
    },
    patience,
  );

  test(
    'again: reuses store and plan; when it is killed, no child stays behind and the store opens again',
    async () => {
      const again = start(folder, port);
      await again.says('\nready\n');
      expect(again.output()).toContain('Found Tamarack Vale, version 1.');
      expect(again.output()).toContain('Its plan is there already.');
      const children = childrenOf(again.process.pid!);
      expect(children).toHaveLength(3);
      again.process.kill('SIGKILL');
      await again.exit;
      await allGone(children);

      const afterKill = start(folder, port);
      await afterKill.says('\nready\n');
      expect(afterKill.output()).toContain('Its plan is there already.');
      afterKill.process.kill('SIGTERM');
      expect(await afterKill.exit).toBe(0);
    },
    patience,
  );
});
