import { typesOf } from '../counting.js';
import type { Measure } from '../shortfall.js';

/** Sites built as a type that the promise does not name, or simplified to one. */
export const otherTypesBuilt: Measure<'only-build-types'> = (campus, plan, test) => {
  const other = plan.decisions.placements.filter(
    (p) => !typesOf(campus, p).every((type) => test.buildTypes.includes(type)),
  );
  return { amount: other.length, unit: 'sites', whole: 0, where: other.map((p) => p.site) };
};
