import type { Plan } from '#domain/plan.js';
import type { TierResult } from '#domain/tier.js';
import {
  answerQuestion,
  type AnswerTo,
  type Asked,
  type QuestionKind,
  type QuestionOf,
} from '#planning/answer-question.js';
import { openResolverPool } from '#solving/resolver-pool.js';
import { solveInThread } from '#solving/solve-in-thread.js';
import { CommandFailure, EXIT } from './exit-codes.js';
import { asJson, type Output } from './output.js';
import { readCampus, readPlan, type CampusInput } from './read-files.js';

/** Seconds that a question takes at the most, unless told otherwise. */
const QUESTION_SECONDS = 28;

/** Share of the time for a first plan, where none is given: its two threads come near the bound in it. */
const FIRST_PLAN_SHARE = 0.33;

/** Share of the time in which plans are made; the rest is for reading them. */
const RESOLVING_SHARE = 0.9;

export interface AskOptions {
  readonly seconds?: number;
  /** Rounds of search of each re-solve, in place of as many as the time allows. */
  readonly work?: number;
  readonly seed: number;
  readonly json?: true;
}

export interface AskedFiles {
  readonly campus: string;
  readonly plan?: string;
}

/** A plan to ask about, and where it is from. */
interface Base {
  readonly input: CampusInput;
  readonly plan: Plan;
  readonly tiers: readonly TierResult[];
}

/** Reads the plan that is asked about; without one, solves the campus for a share of the time. */
export async function basePlan(
  files: AskedFiles,
  options: AskOptions,
  output: Output,
): Promise<Base> {
  const input = await readCampus(files.campus);
  if (files.plan !== undefined) {
    const { plan, file, campus } = await readPlan(files.plan, input);
    return { input: { ...input, campus }, plan, tiers: file.tiers };
  }
  const { seed, work } = options;
  const seconds = (options.seconds ?? QUESTION_SECONDS) * FIRST_PLAN_SHARE;
  const most = work === undefined ? ` for ${Math.round(seconds)} s` : '';
  output.note(`No plan is given: planning${most} first.`);
  const limits = work === undefined ? { seconds } : { work };
  const { report, plan } = await solveInThread(input.campus, { seed, ...limits });
  if (plan) return { input, plan, tiers: report.tiers };
  if (report.ending === 'no-plan') {
    throw new CommandFailure(EXIT.noPlan, [
      'It is proven that no plan keeps every binding rule; "campus-plan conflicts" says what stands against what.',
    ]);
  }
  throw new CommandFailure(EXIT.stoppedWithoutPlan, [
    'No plan was found in the time; give more with --seconds, or a plan file.',
  ]);
}

/** One question with what it needs from the command line. */
export interface Asking<K extends QuestionKind> {
  readonly question: QuestionOf<K>;
  readonly files: AskedFiles;
  readonly options: AskOptions;
  readonly lines: (answer: AnswerTo<K>) => string[];
}

/** Asks, and prints the answer as lines or as JSON. */
export async function askAndPrint<K extends QuestionKind>(
  { question, files, options, lines }: Asking<K>,
  output: Output,
): Promise<number> {
  const began = beganAt(output);
  const base = await basePlan(files, options, output);
  const work = (asked: Asked) => answerQuestion(question, asked);
  const answer = await ask(work, base, { options, output, began });
  if (options.json) output.out(asJson(answer));
  else for (const line of lines(answer)) output.out(line);
  return EXIT.fine;
}

/** Answers a question about a plan within its time, on threads of its own. */
export async function ask<T>(
  work: (asked: Asked) => Promise<T>,
  base: Base,
  { options, output, began }: { options: AskOptions; output: Output; began: number },
): Promise<T> {
  const pool = openResolverPool({ seconds: secondsToResolve(options, began) });
  try {
    return await work({
      campus: base.input.campus,
      plan: base.plan,
      tiers: base.tiers,
      resolver: pool,
      seed: options.seed,
      effort: options.work === undefined ? 'timed' : { kind: 'rounds', rounds: options.work },
      onStep: stepPrinter(output),
    });
  } finally {
    await pool.close();
  }
}

/** When the person who asks began to wait, on the clock of `performance.now`. */
export function beganAt({ began = performance.now() }: Output): number {
  return began;
}

/** Seconds that are left for planning again, the reading of what is found set aside. */
export function secondsToResolve(
  { seconds = QUESTION_SECONDS }: AskOptions,
  began: number,
): number {
  const used = (performance.now() - began) / 1000;
  return Math.max(0.5, (seconds - used) * RESOLVING_SHARE);
}

/** Seconds between two lines of progress. */
const QUIET_SECONDS = 4;

/** Prints a step of the work, now and then. */
export function stepPrinter(output: Output): (step: string, share: number) => void {
  const began = performance.now();
  let printed = -Infinity;
  return (step, share) => {
    const now = (performance.now() - began) / 1000;
    if (now - printed < QUIET_SECONDS) return;
    printed = now;
    output.note(`${now.toFixed(1).padStart(7)} s  ${step} (${Math.round(share * 100)} %)`);
  };
}
