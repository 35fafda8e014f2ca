import type { PlanAnswers } from '#report/parts/plan-answers.js';
import type { JsonDocument } from '../json-document.js';
import type { Explanation } from '../ports/explanation-store.js';

/** Where each kind of question stands among the answers that documents show. */
const PLACES = {
  'next-site': 'nextSite',
  limits: 'limits',
  additions: 'additions',
  promises: 'promises',
  futures: 'futures',
} as const satisfies Record<string, keyof PlanAnswers>;

/** Kinds of question that documents show, in the order in which they stand there. */
export const DOCUMENT_QUESTIONS = Object.keys(PLACES) as (keyof typeof PLACES)[];

/**
 * Answers by the kind of their question, as documents take them. Left out are other kinds, and futures
 * where time did not allow any.
 */
export function planAnswers(byKind: Readonly<Record<string, JsonDocument>>): PlanAnswers {
  const { futures, ...others }: PlanAnswers = Object.fromEntries(
    DOCUMENT_QUESTIONS.flatMap((kind) => (byKind[kind] ? [[PLACES[kind], byKind[kind]]] : [])),
  );
  return { ...others, ...(futures && futures.fixed.futures > 0 ? { futures } : {}) };
}

/** The newest answer of each kind, of questions about a plan that are listed newest first. */
export function newestAnswers(
  explanations: readonly Explanation[],
): Readonly<Record<string, JsonDocument>> {
  const answers: Record<string, JsonDocument> = {};
  for (const { question, answer, state } of explanations) {
    const { kind } = question;
    if (state === 'done' && answer && typeof kind === 'string') answers[kind] ??= answer;
  }
  return answers;
}
