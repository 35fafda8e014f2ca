import { fileURLToPath } from 'node:url';
import type { Ending, TierResult } from '#domain/tier.js';
import { runChild } from '../peers/child.js';
import { known, lastOf, type Moment, type PeerRun } from '../peers/outcome.js';

/** One line that our process prints. */
export type OursLine =
  | { readonly kind: 'plan'; readonly values: readonly number[] }
  | { readonly kind: 'bound'; readonly bound: number }
  | {
      readonly kind: 'result';
      readonly ending: Ending;
      readonly tiers: readonly TierResult[];
      readonly verified: boolean;
      readonly sites: number;
    };

export interface OursRun extends PeerRun {
  readonly ending: string;
  readonly verified: boolean;
  readonly sites: number;
  /** Seconds to the first plan, whatever its tiers. */
  readonly firstPlan?: number;
  /** Tiers before benefit at the values that were reached; the peers are given them as rows. */
  readonly held: ReadonlyMap<string, number>;
  /** Whether all of them were proven. */
  readonly earlyProven: boolean;
}

const OVERTIME = 30;

/** Solves a campus file cold, in a process of its own. */
export async function runOurs(path: string, seconds: number): Promise<OursRun> {
  const script = fileURLToPath(new URL('./ours-process.js', import.meta.url));
  const run = await runChild(process.execPath, [script, path, String(seconds)], {
    atMostSeconds: seconds + OVERTIME,
  });
  const told = run.lines
    .filter(({ text }) => text.startsWith('{'))
    .map(({ seconds: at, text }) => ({ at, line: JSON.parse(text) as OursLine }));
  const result = told.map(({ line }) => line).find((line) => line.kind === 'result');
  if (!result) {
    const said = run.lines
      .map(({ text }) => text)
      .slice(-5)
      .join('\n');
    throw new Error(`our solve of ${path} ended without a result:\n${said}`);
  }
  const place = result.tiers.findIndex(({ name }) => name === 'benefit');
  const early = result.tiers.slice(0, Math.max(0, place));
  const moments = told.flatMap(({ at, line }) => momentOf(line, at, early));
  const benefit = result.tiers[place];
  const firstPlan = told.find(({ line }) => line.kind === 'plan')?.at;
  return {
    ended: result.ending === 'proven' ? 'optimal' : 'stopped',
    ending: result.ending,
    verified: result.verified,
    sites: result.sites,
    seconds: run.seconds,
    moments,
    held: new Map(early.map(({ name, value }) => [name, value])),
    earlyProven: early.every(({ proven }) => proven),
    ...known({
      firstPlan,
      objective: benefit?.value,
      bound: benefit?.bound ?? lastOf(moments, 'bound'),
      peakMiB: run.peakMiB,
    }),
  };
}

/** A plan counts for benefit once it is as good as the last one in every tier before. */
function momentOf(line: OursLine, seconds: number, early: readonly TierResult[]): Moment[] {
  if (line.kind === 'bound') return [{ seconds, bound: line.bound }];
  if (line.kind === 'result') return [];
  const kept = early.every(
    ({ value, tolerance }, i) => (line.values[i] ?? Infinity) <= value + tolerance + 1e-9,
  );
  const objective = line.values[early.length];
  return kept && objective !== undefined ? [{ seconds, objective }] : [];
}
