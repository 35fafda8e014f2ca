import { fiscalYearLabel } from '#units/fiscal-year.js';
import { preparedBy, standsThrough } from '../counting.js';
import type { Measure } from '../shortfall.js';

/** Square feet missing at the end of the year, existing sites counted. Rounded up to whole feet. */
export const areaShortfall: Measure<'area'> = (campus, plan, test) => {
  const areas = new Map(campus.candidates.map((s) => [s.id, s.areaSqFt]));
  const existing = campus.existing.reduce((sum, s) => sum + s.areaSqFt, 0);
  const built = plan.decisions.placements
    .filter((p) => test.returnedCounts || standsThrough(campus, p, test.by))
    .reduce((sum, p) => sum + preparedBy(p, areas.get(p.site) ?? 0, test.by), 0);
  const amount = Math.max(0, Math.ceil(test.sqFt - existing - built));
  return {
    amount,
    unit: 'square feet',
    whole: Math.max(0, Math.ceil(test.sqFt - existing)),
    where: amount > 0 ? [fiscalYearLabel(test.by)] : [],
  };
};
