import type { AdditionsAnswer } from '#explain/questions/additions/additions.js';
import type { LimitsAnswer } from '#explain/questions/limits/answer.js';
import type { NextSiteAnswer } from '#explain/questions/next-site/answer.js';
import type { PromisesAnswer } from '#explain/questions/promises/answer.js';
import type { FuturesAnswer } from '#futures/results/answer.js';

/** What was asked of a plan, with the answers; a question that was not asked is left out. */
export interface PlanAnswers {
  readonly nextSite?: NextSiteAnswer;
  readonly limits?: LimitsAnswer;
  readonly additions?: AdditionsAnswer;
  readonly promises?: PromisesAnswer;
  readonly futures?: FuturesAnswer;
}
