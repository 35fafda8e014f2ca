import type { Made } from '#explain/questions/common/asked.js';

/** How an answer was found and what it lacks. */
export function madeLines({ sentence, skipped }: Made): string[] {
  return [
    sentence,
    ...(skipped.length > 0 ? [`Left out for want of time: ${skipped.join('; ')}.`] : []),
    'A planning aid: local codes, the institution’s own staff and licensed practice decide.',
  ];
}
