import { digestOf } from '#contracts/canonical.js';
import { fromPlan, type PlanFile } from '#contracts/plan-file.js';
import type { Campus } from '#domain/campus.js';
import type { SolveSettings, ThreadResult } from '#solving/solve-in-thread.js';

export interface SolvedFrom {
  readonly campus: Campus;
  /** The campus file as it was given; its digest is written into the plan. */
  readonly document: unknown;
  readonly settings: SolveSettings;
}

/** The plan file of a solve; `undefined` where it ended with no plan. */
export function planFileOf(from: SolvedFrom, result: ThreadResult): PlanFile | undefined {
  const { ending, tiers } = result.report;
  if (!result.plan || ending === 'no-plan' || ending.endsWith('-without-plan')) return undefined;
  const { campus, document, settings } = from;
  return fromPlan(result.plan, campus.calendar, {
    campus: {
      id: campus.id,
      name: campus.name,
      digest: digestOf(document),
      ...(campus.benefit.position === undefined ? {} : { position: campus.benefit.position }),
    },
    solver: {
      name: result.solverName,
      version: result.solverVersion,
      seed: settings.seed,
      limit: limitOf(settings),
    },
    ending: ending as PlanFile['ending'],
    tiers,
  });
}

function limitOf({ seconds, work }: SolveSettings): PlanFile['solver']['limit'] {
  if (work !== undefined) return { kind: 'work', units: work };
  return { kind: 'time', seconds: seconds ?? 1 };
}
