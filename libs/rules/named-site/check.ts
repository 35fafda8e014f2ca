import type { Measure } from '../shortfall.js';

/** 1 while the named site is not prepared by its year as one of its types, else 0. */
export const namedSiteShortfall: Measure<'named-site'> = (_campus, plan, test) => {
  const kept = plan.decisions.placements.some(
    (p) =>
      p.site === test.site &&
      p.year <= test.by &&
      (test.buildTypes === 'any' || test.buildTypes.includes(p.buildType)),
  );
  return { amount: kept ? 0 : 1, unit: 'sites', whole: 1, where: kept ? [] : [test.site] };
};
