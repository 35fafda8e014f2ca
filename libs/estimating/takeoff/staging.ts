export interface Pile {
  readonly cubicYards: number;
  readonly heightFt: number;
}

/**
 * Ground under a loose pile taken as a cone: A = 3 V / h.
 * Source: volume of a cone, V = A h / 3, with 27 cu ft to the cubic yard.
 */
export function pileFootprintSqFt({ cubicYards, heightFt }: Pile): number {
  return (3 * 27 * cubicYards) / heightFt;
}

export interface Spreading {
  readonly cubicYards: number;
  /** Cubic yards delivered in a day. */
  readonly deliveredPerDay: number;
  /** Cubic yards spread in a day. Above 0. */
  readonly spreadPerDay: number;
}

/** Days a material stays on site: the longer of delivering and spreading all of it. */
export function daysOnSite({ cubicYards, deliveredPerDay, spreadPerDay }: Spreading): number {
  return Math.ceil(cubicYards / Math.min(deliveredPerDay, spreadPerDay));
}

/**
 * Most that lies in the pile at once, when the last delivery has come: all of it less what was spread on
 * the days before.
 */
export function largestPileCuYd({ cubicYards, deliveredPerDay, spreadPerDay }: Spreading): number {
  const daysBefore = Math.max(0, cubicYards / deliveredPerDay - 1);
  return cubicYards - Math.min(spreadPerDay, deliveredPerDay) * daysBefore;
}
