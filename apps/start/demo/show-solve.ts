import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { OpenStore } from '#persistence/open-store.js';
import type { CampusSummary } from '#planning/ports/campus-store.js';
import type { SolveRequest } from '#planning/solve-request.js';
import { UnreadablePlanError } from '#planning/unreadable-plan.js';
import { shownPlan } from '#planning/use-cases/shown-plan.js';
import { listDocuments, writeDocument } from '#planning/use-cases/write-document.js';
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
    return showKeptPlan(context, found.planId);
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

/** A plan in the store may be one of an earlier program; the page says what to do about it. */
async function showKeptPlan(context: ShowContext, planId: string): Promise<void> {
  try {
    await showPlan(context, planId);
  } catch (error) {
    if (!(error instanceof UnreadablePlanError)) throw error;
    context.options.terminal.say(
      'An earlier version of the program stored it, and it no longer reads. Solve again on the page.',
    );
  }
}

async function showPlan(context: ShowContext, planId: string): Promise<void> {
  const { adapters, options, store } = context;
  const { outFolder, terminal } = options;
  const shown = await shownPlan({ ...store, ...adapters }, planId);
  if (shown === null) throw new Error(`plan ${planId} is gone`);
  const { plan, overview } = shown;
  terminal.say(`A verified plan (${ENDINGS[plan.ending] ?? plan.ending}):`);
  adapters.headline(overview).forEach((line) => terminal.say(`  ${line}`));
  terminal.say('Writing its documents ...');
  const names = await writeDocuments(context, planId);
  terminal.say(`In ${outFolder}:`);
  names.forEach((name) => terminal.say(`  ${name}`));
}

const ENDINGS: Readonly<Record<string, string>> = {
  proven: 'proven best',
  'time-limit': 'the best found in the time',
  'work-limit': 'the best found with the work allowed',
  cancelled: 'the best found until it was stopped',
};

/** Writes the documents that a plan usually has into the folder for them, and answers their names. */
async function writeDocuments(context: ShowContext, planId: string): Promise<string[]> {
  const { adapters, options, store } = context;
  const ports = { ...store, ...adapters };
  await mkdir(options.outFolder, { recursive: true });
  const names: string[] = [];
  for (const { fileName } of (await listDocuments(ports, planId)) ?? []) {
    if (options.stopping.aborted) break;
    const outcome = await writeDocument(ports, { planId, fileName, paper: 'letter' });
    if (outcome.kind !== 'written') throw new Error(`${fileName} of plan ${planId} is gone`);
    await writeFile(join(options.outFolder, fileName), outcome.document.bytes);
    names.push(fileName);
  }
  return names;
}

function withoutPlan({ conflict, ending, problem }: SolveRequest): string {
  if (problem !== null) return `No plan: ${problem.problem} ${problem.remedy}`;
  if (ending !== 'no-plan') return `No plan was found (${ending}).`;
  const members = conflict.map(({ name }) => `  - ${name}`);
  return ['No plan can keep all of this at once:', ...members].join('\n');
}
