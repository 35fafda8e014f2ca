import type { Campus } from '#domain/campus.js';
import type { Solver } from '#mip/solver.js';
import type { SolveSettings } from '#optimizer/solve/settings.js';
import { quietSurroundings } from '#optimizer/solve/quiet-surroundings.js';
import { solveCampus, type SolveResult } from '#optimizer/solve/solve-campus.js';

/** Solves in this thread, to the end unless the settings say otherwise, and tells nothing meanwhile. */
export function solveHere(
  campus: Campus,
  solver: Solver,
  settings: SolveSettings = { seed: 1 },
): SolveResult {
  const began = performance.now();
  return solveCampus(campus, solver, {
    settings,
    around: quietSurroundings(() =>
      settings.seconds === undefined ? 0 : (performance.now() - began) / 1000,
    ),
  });
}
