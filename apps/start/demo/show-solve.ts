import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { OpenStore } from '#persistence/open-store.js';
import type { CampusSummary } from '#planning/ports/campus-store.js';
import type { SolveRequest } from '#planning/solve-request.js';
import { writeDocument } from '#planning/use-cases/write-document.js';
import type { StartAdapters, StartOptions } from '../start-options.js';
import { progressStage, progressText } from '../terminal/progress-text.js';
import { followSolve } from './follow-solve.js';
import { solveToShow } from './solve-to-show.js';

export interface ShowContext {
  readonly store: OpenStore;
  readonly adapters: StartAdapters;
  readonly options: StartOptions;
  readonly campus: CampusSummary;
}

/** Brings the campus to a plan, if there can be one, and says what came out. */
export async function showSolve(context: ShowContext): Promise<void> {
  const { campus, options, store } = context;
  const found = await solveToShow(store, campus);
  if (found.kind === 'plan') {
    options.terminal.say('Its plan is there already.');
    return showPlan(context, found.planId);
  }
  options.terminal.say('Solving ...');
  const request = await followSolve(store.requests, found.requestId, {
    stopping: options.stopping,
    onChange: (state) =>
      options.terminal.progress(progressText(state, new Date()), progressStage(state)),
  });
  if (request === null) return;
  if (request.planId === null) options.terminal.say(withoutPlan(request));
  else await showPlan(context, request.planId);
}

async function showPlan({ adapters, options, store }: ShowContext, planId: string): Promise<void> {
  const { outFolder, terminal } = options;
  const plan = await store.plans.load(planId);
  const outcome = await writeDocument(
    { ...store, ...adapters },
    { planId, fileName: 'administration-brief.pdf', paper: 'letter' },
  );
  if (plan === null || outcome.kind !== 'written') throw new Error(`plan ${planId} is gone`);
  await mkdir(outFolder, { recursive: true });
  const path = join(outFolder, outcome.document.fileName);
  await writeFile(path, outcome.document.bytes);
  terminal.say(`A verified plan (${plan.ending}):`);
  adapters.headline(plan.overview).forEach((line) => terminal.say(`  ${line}`));
  terminal.say(`The administration brief is in ${path}`);
}

function withoutPlan({ conflict, ending, problem }: SolveRequest): string {
  if (problem !== null) return `No plan: ${problem.problem} ${problem.remedy}`;
  if (ending !== 'no-plan') return `No plan was found (${ending}).`;
  const members = conflict.map(({ name }) => `  - ${name}`);
  return ['No plan can keep all of this at once:', ...members].join('\n');
}
