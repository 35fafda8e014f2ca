import { randomBelow, type Random } from '#units/random.js';

export const KINDS = ['loose', 'tight', 'knife-edge'] as const;

/**
 * How much a generated program can give, against what its sites ask for:
 * `loose`: a third more money and hours than the demo, half as much compost again;
 * `tight`: the demo's own strain, sized to the sites;
 * `knife-edge`: as tight, with sites of nearly one size and a capital allotment that grows with the
 * cost of building and pays for a whole number of them a year with one percent to spare, so that many
 * plans are nearly equal and fractions of sites look better than whole ones.
 */
export type Kind = (typeof KINDS)[number];

export interface ProgramShape {
  readonly sites: number;
  /** Years in which sites may be built, at most 50. */
  readonly years: number;
  readonly kind: Kind;
  readonly seed: number;
  /** Build types of each site; left out: two to four, drawn. */
  readonly types?: number;
}

/** Numbers drawn for one program, always the same for the same seed. */
export class Draw {
  constructor(private readonly random: Random) {}

  share(): number {
    return this.random();
  }

  between(low: number, high: number): number {
    return low + (high - low) * this.random();
  }

  /** A whole number between two, both included. */
  whole(low: number, high: number): number {
    return low + randomBelow(this.random, high - low + 1);
  }

  chance(share: number): boolean {
    return this.random() < share;
  }

  pick<T>(items: readonly T[]): T {
    const item = items[randomBelow(this.random, items.length)];
    if (item === undefined) throw new RangeError('nothing to pick from');
    return item;
  }

  /** So many different items, in the order of the list. */
  some<T>(items: readonly T[], count: number): T[] {
    const left = items.map((_, place) => place);
    const taken = Array.from({ length: Math.min(count, items.length) }, () =>
      left.splice(randomBelow(this.random, left.length), 1),
    ).flat();
    return items.filter((_, place) => taken.includes(place));
  }
}
