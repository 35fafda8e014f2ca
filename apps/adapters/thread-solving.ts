import type { Campus } from '#domain/campus.js';
import type { JsonDocument } from '#planning/json-document.js';
import type { SolveHooks, SolveJob, SolveResult, Solving } from '#planning/ports/solving.js';
import type { SolveProgress } from '#planning/solve-request.js';
import { solveInThread, type SolveSettings } from '#solving/solve-in-thread.js';
import { campusOf } from './campus-document.js';
import { earlierDecisions } from './saved-plan.js';
import { planFileOf } from './solved-plan.js';

/** Solves campus documents in threads of this process. */
export const threadSolving: Solving = {
  async solve(job, hooks) {
    const campus = campusOf(job.campus);
    const settings = settingsOf(job);
    const began = Date.now();
    const result = await solveInThread(campus, settings, {
      signal: hooks.signal,
      ...(job.start === null ? {} : { start: earlierDecisions(job.start, campus) }),
      ...progressHooks(campus, hooks, began),
    });
    const { ending, conflict } = result.report;
    const file = planFileOf({ campus, document: job.campus, settings }, result);
    const solverVersion = `${result.solverName} ${result.solverVersion}`;
    return {
      ending,
      conflict,
      solverVersion,
      plan: file ? asDocument(file) : null,
    } satisfies SolveResult;
  },
};

function settingsOf({ seed, limits }: SolveJob): SolveSettings {
  return {
    seed,
    ...(limits.seconds === null ? {} : { seconds: limits.seconds }),
    ...(limits.work === null ? {} : { work: limits.work }),
    ...(limits.gap === null ? {} : { gap: limits.gap }),
  };
}

/** Plan files are plain JSON; what is left out is not written as undefined. */
function asDocument(file: object): JsonDocument {
  return JSON.parse(JSON.stringify(file)) as JsonDocument;
}

function progressHooks(campus: Campus, hooks: SolveHooks, began: number) {
  let sites = 0;
  let last: Omit<SolveProgress, 'elapsedSeconds' | 'message'> = {
    tier: null,
    bestObjective: null,
    bound: null,
    gap: null,
  };
  const tell = () => {
    const elapsedSeconds = (Date.now() - began) / 1000;
    const message =
      sites === 0
        ? 'Looking for a first plan'
        : `Best plan so far builds ${sites} of ${campus.candidates.length} sites`;
    hooks.onProgress({ ...last, elapsedSeconds, message });
  };
  return {
    onProgress: (p: {
      tier: string;
      objective: number | null;
      bound: number | null;
      gap: number | null;
    }) => {
      last = { tier: p.tier, bestObjective: p.objective, bound: p.bound, gap: p.gap };
      tell();
    },
    onPlan: (plan: { decisions: { placements: readonly unknown[] } }) => {
      sites = plan.decisions.placements.length;
      tell();
    },
  };
}
