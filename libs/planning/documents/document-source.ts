import type { Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import { groundOf, type Ground } from '#explain/overview/ground.js';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import type { PlanAnswers } from '#report/parts/plan-answers.js';

/** What the documents of one plan are made from. */
export interface DocumentSource {
  readonly campus: Campus;
  readonly plan: Plan;
  readonly overview: PlanOverview;
  /** What was asked of the plan; left out where nothing was. */
  readonly answers?: PlanAnswers;
  /** What explanations are worked out from; worked out itself on first use. */
  readonly ground: () => Ground;
}

export function documentSource(of: Omit<DocumentSource, 'ground'>): DocumentSource {
  let ground: Ground | undefined;
  return { ...of, ground: () => (ground ??= groundOf(of.campus, of.plan)) };
}
