import type { Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import type { TierResult } from '#domain/tier.js';
import type { Asked } from '#explain/questions/common/asked.js';
import type { NextSiteAnswer } from '#explain/questions/next-site/answer.js';
import { nextSite } from '#explain/questions/next-site/next-site.js';

/** What can be asked of a verified plan. */
export type Question = { readonly kind: 'next-site' };

export type Answer = NextSiteAnswer;

export type { Asked } from '#explain/questions/common/asked.js';

/** A plan of a campus that a question is asked of. */
export interface QuestionedPlan {
  readonly campus: Campus;
  readonly plan: Plan;
  readonly tiers: readonly TierResult[];
}

/** Answers a question by planning changed campuses again and comparing. */
export function answerQuestion(question: Question, asked: Asked): Promise<Answer> {
  switch (question.kind) {
    case 'next-site':
      return nextSite(asked);
  }
}
