import { gallonsOf } from './rain.js';

export interface IrrigationNeed {
  readonly areaSqFt: number;
  /** Reference evapotranspiration of the period, inches. */
  readonly referenceInches: number;
  /** Water need against the reference, by planting. */
  readonly plantFactor: number;
  /** Rain of the period that stays in the root zone, inches. */
  readonly effectiveRainInches: number;
  /** Part of the water applied that reaches the roots, above 0 to 1. */
  readonly efficiency: number;
}

/**
 * Gallons to apply in a period: max(0, ET x plant factor - rain) x area x 0.62338 / efficiency.
 * Source: plant factor method of ANSI/ASABE S623.
 */
export function irrigationGallons(need: IrrigationNeed): number {
  const inches = need.referenceInches * need.plantFactor - need.effectiveRainInches;
  return gallonsOf(need.areaSqFt, Math.max(0, inches)) / need.efficiency;
}
