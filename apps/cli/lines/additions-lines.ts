import type { AdditionRow, AdditionsAnswer } from '#explain/questions/additions/additions.js';
import { madeLines } from './made-lines.js';

/** What each addition buys, and what it buys for the money. */
export function additionsLines({ headline, additions, made }: AdditionsAnswer): string[] {
  return [headline, '', ...additions.flatMap(additionLines), '', ...madeLines(made)];
}

function additionLines({ sentence, note }: AdditionRow): string[] {
  return [`  ${sentence}`, `    ${note}`];
}
