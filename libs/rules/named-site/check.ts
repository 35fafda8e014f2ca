import { finishedIn, standsThrough } from '../counting.js';
import type { Measure } from '../shortfall.js';

/** 1 while the whole of the named site is not prepared by its year as one of its types, else 0. */
export const namedSiteShortfall: Measure<'named-site'> = (campus, plan, test) => {
  const kept = plan.decisions.placements.some(
    (p) =>
      p.site === test.site &&
      finishedIn(p) <= test.by &&
      (test.returnedCounts || standsThrough(campus, p)) &&
      (test.buildTypes === 'any' || test.buildTypes.includes(p.buildType)),
  );
  return { amount: kept ? 0 : 1, unit: 'sites', whole: 1, where: kept ? [] : [test.site] };
};
