import { run } from '#apps/cli/program.js';

export interface CommandRun {
  readonly code: number;
  /** What the command printed as its result. */
  readonly out: string;
  /** What it told beside that. */
  readonly notes: string;
}

/** Runs one command line in this process and keeps what it prints. */
export async function runCommand(...args: string[]): Promise<CommandRun> {
  const out: string[] = [];
  const notes: string[] = [];
  const code = await run(args, {
    out: (line) => out.push(line),
    note: (line) => notes.push(line),
  });
  return { code, out: out.join('\n'), notes: notes.join('\n') };
}
