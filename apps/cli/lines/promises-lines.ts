import type { PromisesAnswer } from '#explain/questions/promises/answer.js';
import { madeLines } from './made-lines.js';

/** How long the yearly promise lasts, what each promise costs, and what skipped years would buy. */
export function promisesLines(answer: PromisesAnswer): string[] {
  const { lastKeptSentence, promises, skipping, notModelled, made } = answer;
  return [
    lastKeptSentence,
    '',
    'What letting each promise go would change:',
    ...promises.map(({ sentence }) => `  ${sentence}`),
    ...(skipping.length > 0 ? ['Skipping years of the yearly promise:'] : []),
    ...skipping.map(({ sentence }) => `  ${sentence}`),
    notModelled,
    '',
    ...madeLines(made),
  ];
}
