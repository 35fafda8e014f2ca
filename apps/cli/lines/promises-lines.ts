import type { PromisesAnswer } from '#explain/questions/promises/answer.js';
import { madeLines } from './made-lines.js';

/** How long the yearly promise lasts, what each promise costs, and what skipped years would buy. */
export function promisesLines(answer: PromisesAnswer): string[] {
  const { lastKeptSentence, promises, skipping, notModelled, made } = answer;
  return [
    lastKeptSentence,
    '',
    ...(promises.length > 0
      ? ['What letting each promise go would change:']
      : ['The campus file holds no promise that could be let go.']),
    ...promises.map(({ sentence }) => `  ${sentence}`),
    ...(skipping.length > 0 ? ['Skipping years of the yearly promise:'] : []),
    ...skipping.map(({ sentence }) => `  ${sentence}`),
    ...(promises.length > 0 ? [notModelled] : []),
    '',
    ...madeLines(made),
  ];
}
