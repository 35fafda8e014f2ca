import type { FileRun } from './cbc.js';
import { runChild, type ChildRun } from './child.js';
import { known, lastOf, numberIn, type Moment, type PeerRun } from './outcome.js';

const OVERTIME = 20;

/** GLPK's own command on a model file. */
export async function runGlpsol(file: FileRun): Promise<PeerRun> {
  const reading = file.format === 'mps' ? '--freemps' : '--lp';
  const limit = ['--tmlim', String(Math.max(1, Math.ceil(file.seconds)))];
  const run = await runChild('glpsol', [reading, file.path, ...limit], {
    atMostSeconds: file.seconds + OVERTIME,
  });
  return readGlpsol(run, file);
}

/** Read from its log, which tells a plan at its best as `mip = VALUE >= BOUND` or after `>>>>>`. */
export function readGlpsol(run: ChildRun, { sense, format }: Omit<FileRun, 'path'>): PeerRun {
  const sign = sense === 'maximize' && format === 'mps' ? -1 : 1;
  const text = run.lines.map((line) => line.text).join('\n');
  const moments = run.lines.flatMap(({ seconds, text: line }) => momentOf(line, seconds, sign));
  const ran = { seconds: run.seconds, moments, ...known({ peakMiB: run.peakMiB }) };
  if (/NO (PRIMAL|INTEGER) FEASIBLE SOLUTION/.test(text)) return { ended: 'infeasible', ...ran };
  const objective = lastOf(moments, 'objective');
  if (text.includes('INTEGER OPTIMAL SOLUTION FOUND')) {
    return { ended: 'optimal', ...known({ objective, bound: objective }), ...ran };
  }
  const ended = run.code === 0 || run.code === null ? 'stopped' : 'failed';
  return { ended, ...known({ objective, bound: lastOf(moments, 'bound') }), ...ran };
}

function momentOf(line: string, seconds: number, sign: number): Moment[] {
  const tree = /(?:mip =|>>>>>)\s+(not found yet|\S+)\s+[<>]=\s+(\S+)/.exec(line);
  const signed = (text: string | undefined) => {
    const value = numberIn(text);
    return value === undefined ? undefined : sign * value;
  };
  const found = known({ objective: signed(tree?.[1]), bound: signed(tree?.[2]) });
  return Object.keys(found).length > 0 ? [{ seconds, ...found }] : [];
}
