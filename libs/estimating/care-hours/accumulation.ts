import { COMPONENTS } from '#domain/component.js';
import type { CareByComponent, ComponentAreas } from './site-care.js';

export interface Accumulation {
  /** Hours a year of one site in the long run. */
  readonly matureHours: number;
  /** Hours that a steady row of young sites costs above mature care: E = sum (m1 - m) / (1 - e^-k). */
  readonly youngHours: number;
}

/**
 * The program law: with one equal site planted each year, the hours of year n are
 *
 *     H(n) = m n + sum over components (m1 - m) (1 - e^(-k n)) / (1 - e^-k)  ->  m n + E
 *
 * a geometric series. A component that does not decay (k = 0) or starts at its mature level adds to
 * `matureHours` only if m1 = m; otherwise it has no limit and this throws.
 */
export function accumulation(areasSqFt: ComponentAreas, care: CareByComponent): Accumulation {
  let matureHours = 0;
  let youngHours = 0;
  for (const component of COMPONENTS) {
    const thousands = (areasSqFt[component] ?? 0) / 1000;
    const { firstYearHours, matureHours: mature, decayPerYear } = care[component];
    matureHours += thousands * mature;
    if (firstYearHours === mature || thousands === 0) continue;
    if (decayPerYear <= 0) throw new RangeError(`${component} never reaches its mature care`);
    youngHours += (thousands * (firstYearHours - mature)) / (1 - Math.exp(-decayPerYear));
  }
  return { matureHours, youngHours };
}

/** Hours in year `n` of a program that plants one such site each year, in the limit of many years. */
export function accumulatedHours({ matureHours, youngHours }: Accumulation, n: number): number {
  return matureHours * n + youngHours;
}

/** Years (not whole) until a flat capacity is reached: t* = (C - E) / m. */
export function yearsUntilFull(law: Accumulation, capacityHours: number): number {
  return (capacityHours - law.youngHours) / law.matureHours;
}
