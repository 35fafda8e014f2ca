export interface Haul {
  readonly haulFeet: number;
  /** Distance included in the spreading rates, ft. */
  readonly freeFeet: number;
  /** Added share of hours per foot beyond it. */
  readonly perFoot: number;
}

/** What hand hauling multiplies spreading hours by: 1 + per foot x max(0, distance - free). */
export function haulFactor({ haulFeet, freeFeet, perFoot }: Haul): number {
  return 1 + perFoot * Math.max(0, haulFeet - freeFeet);
}
