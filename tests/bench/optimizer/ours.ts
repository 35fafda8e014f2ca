import { fileURLToPath } from 'node:url';
import type { Ending, TierResult } from '#domain/tier.js';
import { runChild, type ChildRun } from '../peers/child.js';
import { known, lastOf, type Moment, type PeerRun } from '../peers/outcome.js';

/** One line that our process prints. */
export type OursLine =
  | {
      readonly kind: 'tiers';
      readonly tiers: readonly { readonly name: string; readonly tolerance: number }[];
    }
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
  return read(told, run);
}

interface Told {
  readonly at: number;
  readonly line: OursLine;
}

/** Where the process was ended before its result, the last plan it told is what was reached. */
function read(told: readonly Told[], run: ChildRun): OursRun {
  const lines = told.map(({ line }) => line);
  const result = lines.find((line) => line.kind === 'result');
  const tiers = lines.find((line) => line.kind === 'tiers')?.tiers ?? [];
  const place = tiers.findIndex(({ name }) => name === 'benefit');
  const last = lines.findLast((line) => line.kind === 'plan')?.values;
  const early: Early[] = tiers
    .slice(0, Math.max(0, place))
    .flatMap(({ name, tolerance }, i) => (last ? [{ name, tolerance, value: last[i] ?? 0 }] : []));
  const moments = told.flatMap(({ at, line }) => momentOf(line, at, early));
  const benefit = result?.tiers.find(({ name }) => name === 'benefit');
  return {
    ended: result?.ending === 'proven' ? 'optimal' : result ? 'stopped' : 'failed',
    ending: result?.ending ?? `no result: ${run.lines.at(-1)?.text.slice(0, 200)}`,
    verified: result?.verified ?? false,
    sites: result?.sites ?? 0,
    seconds: run.seconds,
    moments,
    held: new Map(early.map(({ name, value }) => [name, value])),
    earlyProven: result !== undefined && result.tiers.slice(0, place).every(({ proven }) => proven),
    ...known({
      firstPlan: told.find(({ line }) => line.kind === 'plan')?.at,
      objective: benefit?.value ?? last?.[place],
      bound: benefit?.bound ?? lastOf(moments, 'bound'),
      peakMiB: run.peakMiB,
    }),
  };
}

interface Early {
  readonly name: string;
  readonly tolerance: number;
  readonly value: number;
}

/** A plan counts for benefit once it is as good as the last one in every tier before. */
function momentOf(line: OursLine, seconds: number, early: readonly Early[]): Moment[] {
  if (line.kind === 'bound') return [{ seconds, bound: line.bound }];
  if (line.kind !== 'plan') return [];
  const kept = early.every(
    ({ value, tolerance }, i) => (line.values[i] ?? Infinity) <= value + tolerance + 1e-9,
  );
  const objective = line.values[early.length];
  return kept && objective !== undefined ? [{ seconds, objective }] : [];
}
