import type { WhyAnswer } from '#explain/questions/why/why.js';
import { madeLines } from './made-lines.js';

/** Where a site stands, and what every other place asked about would do. */
export function whyLines({ headline, places, made }: WhyAnswer): string[] {
  return [
    headline,
    ...places.slice(1).map(({ sentence }) => `  ${sentence}`),
    '',
    ...madeLines(made),
  ];
}
