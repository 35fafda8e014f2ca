import { additions, type AdditionsAnswer } from '#explain/questions/additions/additions.js';
import type { Asked, AskedOfCampus } from '#explain/questions/common/asked.js';
import type { ConflictsAnswer } from '#explain/questions/conflicts/answer.js';
import { conflicts } from '#explain/questions/conflicts/conflicts.js';
import type { LimitsAnswer } from '#explain/questions/limits/answer.js';
import { limits } from '#explain/questions/limits/limits.js';
import type { NextSiteAnswer } from '#explain/questions/next-site/answer.js';
import { nextSite } from '#explain/questions/next-site/next-site.js';
import type { PromisesAnswer } from '#explain/questions/promises/answer.js';
import { promises } from '#explain/questions/promises/promises.js';
import { why, type WhyAnswer, type WhyAsk } from '#explain/questions/why/why.js';

export type { Asked } from '#explain/questions/common/asked.js';

/** What can be asked of a verified plan, by kind: the question with its particulars, and its answer. */
export interface Questions {
  readonly 'next-site': { readonly ask: object; readonly answer: NextSiteAnswer };
  readonly limits: { readonly ask: object; readonly answer: LimitsAnswer };
  readonly promises: { readonly ask: object; readonly answer: PromisesAnswer };
  readonly additions: { readonly ask: object; readonly answer: AdditionsAnswer };
  readonly why: { readonly ask: WhyAsk; readonly answer: WhyAnswer };
}

export type QuestionKind = keyof Questions;
export type QuestionOf<K extends QuestionKind> = { readonly kind: K } & Questions[K]['ask'];
export type AnswerTo<K extends QuestionKind> = Questions[K]['answer'];

const ANSWERS: {
  readonly [K in QuestionKind]: (asked: Asked, question: QuestionOf<K>) => Promise<AnswerTo<K>>;
} = {
  'next-site': (asked) => nextSite(asked),
  limits: (asked) => limits(asked),
  promises: (asked) => promises(asked),
  additions: (asked) => additions(asked),
  why: (asked, { site, year }) => why(asked, { site, ...(year === undefined ? {} : { year }) }),
};

/** Answers a question by planning changed campuses again and comparing. */
export function answerQuestion<K extends QuestionKind>(
  question: QuestionOf<K>,
  asked: Asked,
): Promise<AnswerTo<K>> {
  return ANSWERS[question.kind](asked, question);
}

/** Which promises and limits of a campus cannot all hold; no plan is needed to ask. */
export function answerConflicts(asked: AskedOfCampus): Promise<ConflictsAnswer> {
  return conflicts(asked);
}
