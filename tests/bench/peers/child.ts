import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { createInterface } from 'node:readline';

export interface ChildLine {
  readonly seconds: number;
  readonly text: string;
}

export interface ChildRun {
  /** Standard output and error, with the time at which each line came. */
  readonly lines: readonly ChildLine[];
  readonly seconds: number;
  readonly peakMiB?: number;
  /** Exit code; `null` where it was ended for running over. */
  readonly code: number | null;
}

/** Runs a program to its end, or ends it after so many seconds, and keeps what it says and when. */
export async function runChild(
  command: string,
  args: readonly string[],
  { atMostSeconds }: { readonly atMostSeconds: number },
): Promise<ChildRun> {
  const began = performance.now();
  const elapsed = () => (performance.now() - began) / 1000;
  const child = spawn(command, [...args], { stdio: ['ignore', 'pipe', 'pipe'] });
  const lines: ChildLine[] = [];
  for (const stream of [child.stdout, child.stderr]) {
    createInterface({ input: stream }).on('line', (text) =>
      lines.push({ seconds: elapsed(), text }),
    );
  }
  let peak: number | undefined;
  const watch = setInterval(() => (peak = residentPeakMiB(child.pid) ?? peak), 100);
  const end = setTimeout(() => child.kill('SIGKILL'), atMostSeconds * 1000);
  try {
    const code = await new Promise<number | null>((resolve, reject) => {
      child.once('error', reject);
      child.once('close', resolve);
    });
    return { lines, seconds: elapsed(), code, ...(peak === undefined ? {} : { peakMiB: peak }) };
  } finally {
    clearInterval(watch);
    clearTimeout(end);
  }
}

/** Linux keeps the peak of a process beside its state. */
function residentPeakMiB(pid: number | undefined): number | undefined {
  try {
    const status = readFileSync(`/proc/${pid}/status`, 'utf8');
    const kib = /^VmHWM:\s+(\d+) kB$/m.exec(status)?.[1];
    return kib === undefined ? undefined : Number(kib) / 1024;
  } catch {
    return undefined;
  }
}
