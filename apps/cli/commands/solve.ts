import { writePlanFile } from '#contracts/plan-file.js';
import type { Campus } from '#domain/campus.js';
import type { Decisions } from '#domain/plan.js';
import { checkPlanFile } from '#planning/check-plan-file.js';
import { measuredTier, provenSentence } from '#planning/plan-results.js';
import { solveInThread, type SolveSettings, type ThreadResult } from '#solving/solve-in-thread.js';
import { planFileOf } from '../../adapters/solved-plan.js';
import { EXIT } from '../exit-codes.js';
import { asJson, type Output } from '../output.js';
import { breachLines, counted, problemLines } from '../problem-lines.js';
import { campusInPosition, readCampus, readEarlierPlan, writeText } from '../read-files.js';
import { ensureCanSave } from '../save-place.js';
import { progressPrinter } from '../solve-progress.js';

export interface SolveOptions {
  readonly seconds?: number;
  readonly work?: number;
  readonly gap?: number;
  readonly seed: number;
  readonly plan?: string;
  /** A plan file to go on from, made of this campus or of an earlier state of it. */
  readonly from?: string;
  /** Position on benefit, by its id or name, in place of the one of the file. */
  readonly position?: string;
  readonly json?: true;
}

/** `solve CAMPUS.json`: solves, verifies, saves, and says how near to proven the plan is. */
export async function solve(path: string, options: SolveOptions, output: Output): Promise<number> {
  const read = await readCampus(path);
  const input = { ...read, campus: campusInPosition(read, positionId(options.position)) };
  if (options.plan !== undefined) await ensureCanSave(options.plan, path);
  const start =
    options.from === undefined ? undefined : await readEarlierPlan(options.from, input.campus);
  for (const line of problemLines(input.warnings)) output.note(line);
  const began = performance.now();
  const asked = { ...input, settings: settingsOf(options), ...(start ? { start } : {}) };
  const result = await solveCampusFile(asked, output);
  const seconds = Math.round((performance.now() - began) / 100) / 10;
  const file = planFileOf({ ...input, settings: settingsOf(options) }, result);
  const breaches = result.plan ? checkPlanFile(input.campus, result.plan, result.report) : [];
  const verified = file !== undefined && breaches.length === 0;
  if (verified && options.plan !== undefined) await writeText(options.plan, writePlanFile(file));
  for (const line of breachLines(breaches)) output.note(line);
  const solved = { campus: input.campus, result, verified, seconds, options };
  print(solved, output);
  return exitCode(solved);
}

/** `Kitchen first` as `kitchen-first`. */
function positionId(name: string | undefined): string | undefined {
  return name?.trim().toLowerCase().replaceAll(' ', '-');
}

function settingsOf({ seconds, work, gap, seed }: SolveOptions): SolveSettings {
  const limit =
    work === undefined ? { seconds: seconds ?? 60 } : seconds === undefined ? {} : { seconds };
  return {
    seed,
    ...limit,
    ...(work === undefined ? {} : { work }),
    ...(gap === undefined ? {} : { gap }),
  };
}

interface Asked {
  readonly campus: Campus;
  readonly settings: SolveSettings;
  readonly start?: Decisions;
}

async function solveCampusFile(
  { campus, settings, start }: Asked,
  output: Output,
): Promise<ThreadResult> {
  const cancel = new AbortController();
  const onInterrupt = () => {
    output.note('Stopping; the best plan so far is kept.');
    cancel.abort();
  };
  process.once('SIGINT', onInterrupt);
  try {
    return await solveInThread(campus, settings, {
      signal: cancel.signal,
      ...(start ? { start } : {}),
      ...progressPrinter(campus.candidates.length, output),
    });
  } finally {
    process.removeListener('SIGINT', onInterrupt);
  }
}

interface Solved {
  readonly campus: Campus;
  readonly result: ThreadResult;
  readonly verified: boolean;
  readonly seconds: number;
  readonly options: SolveOptions;
}

function print({ campus, result, verified, seconds, options }: Solved, output: Output): void {
  const { ending, tiers, conflict } = result.report;
  const lead = measuredTier(result.report);
  const sitesBuilt = result.plan?.decisions.placements.length ?? 0;
  if (options.json) {
    output.out(
      asJson({
        ending,
        tiers,
        tier: lead?.name ?? null,
        objective: lead?.value ?? null,
        bound: lead?.bound ?? null,
        gap: lead?.gap ?? null,
        verified,
        sitesBuilt,
        seconds,
        conflict,
        plan: verified ? (options.plan ?? null) : null,
      }),
    );
    return;
  }
  output.out(sentenceOf(campus, result));
  for (const member of conflict)
    output.out(`  cannot all be kept: ${member.kind} "${member.name}" (${member.id})`);
  if (!result.plan) return;
  for (const t of tiers)
    output.out(`  ${t.name}: ${inUnit(t, t.value)}${t.proven ? ', proven' : boundText(t)}`);
  output.out(
    `${counted(sitesBuilt, 'site')} built; ${verified ? 'verified' : 'NOT verified'}; ${seconds} s.`,
  );
  if (verified && options.plan !== undefined) output.out(`Saved in ${options.plan}`);
}

function sentenceOf(campus: Campus, { report, plan }: ThreadResult): string {
  if (report.ending === 'no-plan') return 'It is proven that no plan keeps every binding rule.';
  if (!plan) return `The solve ended before it found a plan (${report.ending}).`;
  return provenSentence(campus, report);
}

type Measured = Pick<ThreadResult['report']['tiers'][number], 'unit' | 'bound'>;

function boundText(tier: Measured): string {
  return tier.bound === null ? ', no bound sought' : `, bound ${inUnit(tier, tier.bound)}`;
}

/** Hundredths of an hour, in which shortfalls are counted, are told as hours. */
function inUnit({ unit }: Measured, value: number): string {
  if (unit === 'hundredths of an hour') return inUnit({ unit: 'hours', bound: null }, value / 100);
  return `${rounded(value)} ${value === 1 ? unit.replace(/s$/, '') : unit}`;
}

function rounded(value: number): string {
  return value.toLocaleString('en-US', { maximumFractionDigits: 1 });
}

function exitCode({ result: { report, plan }, verified }: Solved): number {
  if (report.ending === 'no-plan') return EXIT.noPlan;
  if (!plan) return EXIT.stoppedWithoutPlan;
  return verified ? EXIT.fine : EXIT.checkFailed;
}
