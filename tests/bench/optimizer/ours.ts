import { createRequire } from 'node:module';
import type { Decisions } from '#domain/plan.js';
import type { Ending, TierResult } from '#domain/tier.js';
import { runChild, type ChildRun } from '../peers/child.js';
import { known, lastOf, type Moment, type PeerRun } from '../peers/outcome.js';

/** One line that our process prints. */
export type OursLine =
  | {
      readonly kind: 'tiers';
      readonly tiers: readonly { readonly name: string; readonly tolerance: number }[];
    }
  /** From here on it counts: what was solved before is told no more. */
  | { readonly kind: 'begin' }
  | { readonly kind: 'plan'; readonly values: readonly number[] }
  | { readonly kind: 'bound'; readonly bound: number }
  | {
      readonly kind: 'result';
      readonly ending: Ending;
      readonly tiers: readonly TierResult[];
      readonly decisions?: Decisions;
      /** Largest resident memory up to here. */
      readonly peakMiB: number;
    }
  | {
      readonly kind: 'checked';
      readonly told: number;
      readonly sound: number;
      /** Whether the last plan bears out all that its report claims. */
      readonly last: boolean;
    };

export interface OursRun extends PeerRun {
  readonly ending: string;
  /** Plans that were told, and those of them that pass every check when they are judged anew. */
  readonly plans: { readonly told: number; readonly sound: number };
  /** Whether all plans that were told are sound, and the last one bears out its report. */
  readonly verified: boolean;
  readonly decisions?: Decisions;
  /** What the last plan reaches, tier by tier; empty without one. */
  readonly tiers: readonly TierResult[];
  /** Seconds to the first plan, whatever its tiers. */
  readonly firstPlan?: number;
  /** Tiers before benefit at the values that were reached; the peers are given them as rows. */
  readonly held: Readonly<Record<string, number>>;
  /** Whether all of them were proven. */
  readonly earlyProven: boolean;
}

/** How a campus is solved: for so long, or with so much work. */
export interface OursTask {
  /** Of a campus file. */
  readonly path: string;
  readonly seconds?: number;
  readonly work?: number;
  /** Left out: as many as the command line takes. */
  readonly threads?: 1 | 2;
  readonly seed?: number;
  /** A file with the decisions of a plan to begin from. */
  readonly start?: string;
  /** A campus file that the same process solves for some seconds first, as a server has. */
  readonly after?: { readonly path: string; readonly seconds: number };
}

/** Seconds past its limit after which it is ended: plans are checked anew after the solve. */
const OVERTIME = 120;

/** Seconds after which a solve with so much work is ended. */
const LONGEST = 3600;

/** Solves a campus file, in a process of its own. */
export async function runOurs(task: OursTask): Promise<OursRun> {
  const script = createRequire(import.meta.url).resolve('#bundles/ours-process.js');
  const run = await runChild(process.execPath, [script, JSON.stringify(task)], {
    atMostSeconds: (task.seconds ?? LONGEST) + (task.after?.seconds ?? 0) + OVERTIME,
  });
  const all = run.lines
    .filter(({ text }) => text.startsWith('{'))
    .map(({ seconds: at, text }) => ({ at, line: JSON.parse(text) as OursLine }));
  const began = all.find(({ line }) => line.kind === 'begin')?.at ?? 0;
  const told = all.map(({ at, line }) => ({ at: at - began, line }));
  return readOurs(told, { ...run, seconds: run.seconds - began });
}

export interface Told {
  readonly at: number;
  readonly line: OursLine;
}

/** Where the process was ended before its result, the last plan it told is what was reached. */
export function readOurs(told: readonly Told[], run: ChildRun): OursRun {
  const lines = told.map(({ line }) => line);
  const end = told.find(({ line }) => line.kind === 'result');
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
    ended: endedAs(result?.ending),
    ending: result?.ending ?? `no result: ${whyNot(run)}`,
    ...checksOf(lines),
    seconds: end?.at ?? run.seconds,
    moments,
    tiers: result?.tiers ?? [],
    held: Object.fromEntries(early.map(({ name, value }) => [name, value])),
    earlyProven: last !== undefined && (result?.tiers ?? []).slice(0, place).every((t) => t.proven),
    ...known({
      firstPlan: told.find(({ line }) => line.kind === 'plan')?.at,
      objective: benefit?.value ?? last?.[place],
      bound: benefit?.bound ?? lastOf(moments, 'bound'),
      peakMiB: result?.peakMiB ?? run.peakMiB,
      decisions: result?.decisions,
    }),
  };
}

/** What a process that came to no result said of an error, else its last words. */
function whyNot({ lines, code }: ChildRun): string {
  const said = lines.findLast(({ text }) => /^\S*Error\b/.test(text)) ?? lines.at(-1);
  return `exit code ${code}, ${said?.text.slice(0, 200)}`;
}

function endedAs(ending: Ending | undefined): PeerRun['ended'] {
  if (ending === undefined) return 'failed';
  if (ending === 'no-plan') return 'infeasible';
  return ending === 'proven' ? 'optimal' : 'stopped';
}

function checksOf(lines: readonly OursLine[]): Pick<OursRun, 'plans' | 'verified'> {
  const checked = lines.find((line) => line.kind === 'checked');
  const told = lines.filter((line) => line.kind === 'plan').length;
  return {
    plans: { told, sound: checked?.sound ?? 0 },
    verified: checked !== undefined && checked.last && checked.sound === told,
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
