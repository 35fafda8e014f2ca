import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import type { Campus } from '#domain/campus.js';
import type { Decisions } from '#domain/plan.js';
import type { Model } from '#mip/model.js';
import type { Solver } from '#mip/solver.js';
import { everyLifecycle } from '#optimizer/columns/lifecycles.js';
import { planModel, type HeldTiers, type PlanModel } from '#optimizer/model/plan-model.js';
import { startPoint } from '#optimizer/solve/start-point.js';

/** The benefit model of a campus with all care served: its rows are the hard rules. */
export function hardModel(
  campus: Campus,
  held: HeldTiers = new Map([['unserved-total', 0]]),
): PlanModel {
  const charges = campusCharges(campus);
  return planModel(
    { campus, charges, lifecycles: everyLifecycle(campus, charges) },
    'benefit',
    held,
  );
}

/** Whether a model admits decisions: its whole-number columns fixed there, the rest free. */
export function rowsHold(
  solver: Solver,
  { model, columns }: PlanModel,
  decisions: Decisions,
): boolean {
  const point = startPoint(columns, decisions);
  const placed = point.values.reduce(
    (sum, v, i) => (i < columns.lifecycles.length ? sum + v : sum),
    0,
  );
  if (placed < decisions.placements.length) return false;
  const hired = columns.hires.reduce(
    (sum, _, i) => sum + (point.values[columns.lifecycles.length + i] ?? 0),
    0,
  );
  if (hired < decisions.hires.length) return false;
  const outcome = solver.solve(fixedAt(model, point), { limits: {}, seed: 1 });
  return outcome.kind === 'optimal';
}

function fixedAt(
  model: Model,
  point: { columns: readonly number[]; values: readonly number[] },
): Model {
  const lower = Float64Array.from(model.lower);
  const upper = Float64Array.from(model.upper);
  point.columns.forEach((column, i) => {
    const value = point.values[i] ?? 0;
    lower[column] = Math.max(lower[column] ?? 0, value);
    upper[column] = Math.min(upper[column] ?? 0, value);
  });
  const crossed = lower.some((l, j) => l > (upper[j] ?? 0));
  if (!crossed) return { ...model, lower, upper };
  const rowLower = Float64Array.from(model.rowLower).fill(1, 0, 1);
  const rowUpper = Float64Array.from(model.rowUpper).fill(0, 0, 1);
  return { ...model, rowLower, rowUpper };
}
