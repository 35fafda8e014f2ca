import type { Model } from './model.js';
import type { OpenOptions, OpenRelaxation, Solver } from './solver.js';

/** Uses the relaxation of a model and closes it, whatever happens. */
export function withOpen<T>(
  solver: Solver,
  { model, ...options }: OpenOptions & { readonly model: Model },
  use: (lp: OpenRelaxation) => T,
): T {
  const lp = solver.open(model, options);
  try {
    return use(lp);
  } finally {
    lp.close();
  }
}
