import type { AdditionRow, AdditionsAnswer } from '#explain/questions/additions/additions.js';
import { madeLines } from './made-lines.js';

/** What each addition buys, and what it buys for the money. */
export function additionsLines({ headline, additions, made }: AdditionsAnswer): string[] {
  return [headline, '', ...additions.flatMap(additionLines), '', ...madeLines(made)];
}

function additionLines({ sentence, note }: AdditionRow): string[] {
  return [`  ${capital(sentence)}`, `    ${note}`];
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
