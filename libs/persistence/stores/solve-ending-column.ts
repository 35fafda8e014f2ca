import type { Ending } from '#domain/tier.js';
import { solveEndings } from '#planning/solve-ending.js';

/** Reads the ending column; anything that is no ending is damage. */
export function solveEndingOf(text: string): Ending {
  const ending = solveEndings.find((known) => known === text);
  if (ending === undefined) throw new TypeError(`"${text}" is not an ending of a solve`);
  return ending;
}
