import type { Random } from '#units/random.js';

/** Share of the choices that go by chance alone, so that no way is given up for good. */
const BY_CHANCE = 0.3;

/** What of earlier gains and choices still counts after each choice. */
const MEMORY = 0.99;

/**
 * Chooses among ways of doing the same, more often those that gained more often lately (adaptive large
 * neighborhoods, Ropke and Pisinger 2006).
 */
export class Ways<Way> {
  private readonly gains: Map<Way, number>;
  private readonly choices: Map<Way, number>;

  constructor(
    private readonly all: readonly Way[],
    private readonly random: Random,
  ) {
    this.gains = new Map(all.map((way) => [way, 1]));
    this.choices = new Map(all.map((way) => [way, 1]));
  }

  next(): Way {
    const way = this.random() < BY_CHANCE ? this.drawn(() => 1) : this.drawn((w) => this.rate(w));
    for (const each of this.all) {
      this.gains.set(each, MEMORY * (this.gains.get(each) ?? 0));
      this.choices.set(each, MEMORY * (this.choices.get(each) ?? 0));
    }
    this.choices.set(way, 1 + (this.choices.get(way) ?? 0));
    return way;
  }

  /** Tells that a way led to a gain. */
  reward(way: Way): void {
    this.gains.set(way, 1 + (this.gains.get(way) ?? 0));
  }

  private rate(way: Way): number {
    return (0.05 + (this.gains.get(way) ?? 0)) / (1 + (this.choices.get(way) ?? 0));
  }

  private drawn(weight: (way: Way) => number): Way {
    let left = this.random() * this.all.reduce((sum, way) => sum + weight(way), 0);
    for (const way of this.all) {
      left -= weight(way);
      if (left <= 0) return way;
    }
    throw new RangeError('no way to choose from');
  }
}
