import type { Ending } from '#domain/tier.js';

/** Every way in which a solve can end that ran to its end. "Out of time" is never "fine". */
export const solveEndings = [
  'proven',
  'time-limit',
  'work-limit',
  'cancelled',
  'time-limit-without-plan',
  'work-limit-without-plan',
  'cancelled-without-plan',
  'no-plan',
] as const satisfies readonly Ending[];
