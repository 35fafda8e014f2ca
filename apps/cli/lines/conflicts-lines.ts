import type { ConflictsAnswer } from '#explain/questions/conflicts/answer.js';
import { madeLines } from './made-lines.js';

/** What stands against what, then the repairs, the cheapest first. */
export function conflictsLines({ headline, sets, repairs, made }: ConflictsAnswer): string[] {
  return [
    headline,
    ...(sets.length > 0 ? ['', 'What cannot all be kept:'] : []),
    ...sets.map((set, i) => `  ${i + 1}. ${set.sentence}`),
    ...(repairs.length > 0 ? ['', 'Repairs, the one that gives up least first:'] : []),
    ...repairs.map((repair, i) => `  ${i + 1}. ${repair.sentence}`),
    '',
    ...madeLines(made),
  ];
}
