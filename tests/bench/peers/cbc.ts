import type { Sense } from '#mip/model.js';
import { runChild, type ChildRun } from './child.js';
import { known, lastOf, numberIn, type Moment, type PeerRun } from './outcome.js';

/** A whole-number model in a file, and how long it may be solved. */
export interface FileRun {
  readonly path: string;
  readonly format: 'mps' | 'lp';
  /** Of the model; MPS files of a maximization hold the negated objective. */
  readonly sense: Sense;
  readonly seconds: number;
}

/** Seconds past its limit after which a peer is ended from outside. */
const OVERTIME = 20;

/** CBC on a model file, with two threads. */
export async function runCbc(file: FileRun): Promise<PeerRun> {
  const stops = ['-timeMode', 'elapsed', '-sec', String(file.seconds), '-threads', '2'];
  const exact = ['-ratioGap', '0', '-allowableGap', '0'];
  const run = await runChild('cbc', [file.path, ...stops, ...exact, '-solve', '-quit'], {
    atMostSeconds: file.seconds + OVERTIME,
  });
  return readCbc(run, file);
}

const INFEASIBLE =
  /^(Result - .*infeasible|Pre-processing says infeasible|Problem is infeasible|Cgl0000I .*infeasible)/im;

/** Its progress is of a minimization, and so are its totals, but for LP files that it turned round. */
export function readCbc(
  run: ChildRun,
  { sense, format, seconds: limit }: Omit<FileRun, 'path'>,
): PeerRun {
  const sign = sense === 'maximize' ? -1 : 1;
  const totalSign = format === 'mps' ? sign : 1;
  const text = run.lines.map((line) => line.text).join('\n');
  const moments = run.lines.flatMap(({ seconds, text: line }) => momentOf(line, seconds, sign));
  const ran = { seconds: run.seconds, moments, ...known({ peakMiB: run.peakMiB }) };
  // Out of time in its preprocessing it calls a model infeasible that is not.
  if (INFEASIBLE.test(text) && run.seconds < limit) return { ended: 'infeasible', ...ran };
  const total = (of: RegExp) => {
    const value = numberIn(of.exec(text)?.[1]);
    return value === undefined ? undefined : totalSign * value;
  };
  const objective = total(/^Objective value:\s+(\S+)/m) ?? lastOf(moments, 'objective');
  if (text.includes('Result - Optimal solution found')) {
    return { ended: 'optimal', ...known({ objective, bound: objective }), ...ran };
  }
  const bound = total(/^(?:Lower|Upper) bound:\s+(\S+)/m) ?? lastOf(moments, 'bound');
  const ended = run.code === 0 || run.code === null ? 'stopped' : 'failed';
  return { ended, ...known({ objective, bound }), ...ran };
}

/** A new plan, or a line on the search: `... -97 best solution, best possible -105 (5.01 seconds)`. */
function momentOf(line: string, seconds: number, sign: number): Moment[] {
  const signed = (text: string | undefined) => {
    const value = numberIn(text);
    return value === undefined ? undefined : sign * value;
  };
  const objective = signed(/Integer solution of (\S+) found/.exec(line)?.[1]);
  if (objective !== undefined) return [{ seconds, objective }];
  const tree = /(\S+) best solution, best possible (\S+)/.exec(line);
  const relaxed =
    /^Continuous objective value is (\S+)|cuts changed objective from \S+ to (\S+)/.exec(line);
  const found = known({
    objective: signed(tree?.[1]),
    bound: signed(tree?.[2] ?? relaxed?.[1] ?? relaxed?.[2]),
  });
  return Object.keys(found).length > 0 ? [{ seconds, ...found }] : [];
}
