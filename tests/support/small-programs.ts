import type { Campus } from '#domain/campus.js';
import { parseCampusFile } from '#contracts/parse-campus-file.js';
import { generatedFile } from '../bench/programs/generated-program.js';
import { KINDS, type Kind } from '../bench/programs/shape.js';

export interface SmallProgram {
  readonly name: string;
  readonly kind: Kind;
  readonly seed: number;
}

/** Generated programs that a solver solves to the end in a moment: two of each kind, five sites and six years. */
export const SMALL_PROGRAMS: readonly SmallProgram[] = KINDS.flatMap((kind) =>
  [1, 2].map((seed) => ({ name: `${kind} program ${seed}`, kind, seed })),
);

export function smallCampus({ kind, seed }: SmallProgram): Campus {
  const parsed = parseCampusFile(JSON.stringify(generatedFile({ sites: 5, years: 6, kind, seed })));
  if (!parsed.ok) throw new Error('a generated program is not sound');
  return parsed.campus;
}
