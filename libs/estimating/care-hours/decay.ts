import type { CareCoefficients } from '#domain/component.js';

/** The three numbers that fix the care of one component over the years. */
export type CareDecay = Pick<CareCoefficients, 'firstYearHours' | 'matureHours' | 'decayPerYear'>;

/**
 * Hours per 1,000 sf and year at an age.
 *
 *     m(a) = m_mature + (m_first - m_mature) e^(-k (a - 1)),  a >= 1
 *
 * `age` 1 is the first year after planting; before it (age 0 or less) there is no care.
 * An age between whole years is allowed: unserved hours set the age back.
 *
 * Source: planning judgement; the shape follows establishment guidance (young plantings need the most).
 */
export function careHoursPer1000SqFt(care: CareDecay, age: number): number {
  if (age <= 0) return 0;
  const above = care.firstYearHours - care.matureHours;
  return care.matureHours + above * Math.exp(-care.decayPerYear * (age - 1));
}
