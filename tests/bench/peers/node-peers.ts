import { fileURLToPath } from 'node:url';
import { runChild } from './child.js';
import { known, lastOf, type Moment, type PeerRun } from './outcome.js';

/** One line that a peer's process prints; the last one says how it ended. */
export interface PeerLine {
  readonly ended?: 'optimal' | 'stopped' | 'infeasible';
  readonly objective?: number | undefined;
  readonly bound?: number | undefined;
}

/** Seconds past its limit after which a peer is ended from outside. */
const OVERTIME = 20;

/** Runs a solver of this ecosystem on a model that was serialized into a file. */
export async function runNodePeer(
  which: 'highs' | 'glpk.js',
  path: string,
  seconds: number,
): Promise<PeerRun> {
  const script = fileURLToPath(new URL('./node-peer.js', import.meta.url));
  const run = await runChild(process.execPath, [script, which, path, String(seconds)], {
    atMostSeconds: seconds + OVERTIME,
  });
  const told = run.lines.flatMap(({ seconds: at, text }) => {
    const line = parsed(text);
    return line ? [{ at, line }] : [];
  });
  const moments: Moment[] = told.map(({ at, line }) => ({
    seconds: at,
    ...known({ objective: line.objective, bound: line.bound }),
  }));
  const ended = told.at(-1)?.line.ended;
  return {
    ended: ended ?? (run.code === null ? 'stopped' : 'failed'),
    seconds: run.seconds,
    moments,
    ...known({
      objective: lastOf(moments, 'objective'),
      bound: lastOf(moments, 'bound'),
      peakMiB: run.peakMiB,
    }),
  };
}

/** Libraries print lines of their own, which are no JSON. */
function parsed(text: string): PeerLine | undefined {
  if (!text.startsWith('{')) return undefined;
  return JSON.parse(text) as PeerLine;
}
