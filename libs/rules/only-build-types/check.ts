import type { Measure } from '../shortfall.js';

/** Sites built as a type that the promise does not name. */
export const otherTypesBuilt: Measure<'only-build-types'> = (_campus, plan, test) => {
  const other = plan.decisions.placements.filter((p) => !test.buildTypes.includes(p.buildType));
  return { amount: other.length, unit: 'sites', whole: 0, where: other.map((p) => p.site) };
};
