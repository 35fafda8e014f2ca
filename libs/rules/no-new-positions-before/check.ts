import { fiscalYearLabel } from '#units/fiscal-year.js';
import type { Measure } from '../shortfall.js';

/** Recurring positions that start before the year opens. */
export const earlyPositions: Measure<'no-new-positions-before'> = (campus, plan, test) => {
  const recurring = new Set(
    campus.positions.filter((p) => p.term === 'recurring').map((p) => p.id),
  );
  const early = plan.decisions.hires.filter((h) => recurring.has(h.position) && h.year < test.year);
  return {
    amount: early.reduce((sum, h) => sum + h.count, 0),
    unit: 'positions',
    whole: 0,
    where: early.map((h) => fiscalYearLabel(h.year)),
  };
};
