/** A column at a value that is not whole. */
interface Fraction {
  readonly column: number;
  readonly value: number;
}

interface Known {
  readonly down: number;
  readonly up: number;
  readonly times: number;
}

/** The least that counts as a gain, so that a branch that gains on one side only is still better than none. */
const LEAST = 1e-2;

/** What branching on columns has gained so far, for each unit that a value was moved (pseudocosts). */
export class Gains {
  private readonly known = new Map<number, Known>();

  knows({ column }: Fraction): boolean {
    return this.known.has(column);
  }

  /** The gain to expect of branching here: the product of both sides. */
  expected({ column, value }: Fraction): number {
    const { down, up } = this.known.get(column) ?? { down: 0, up: 0 };
    const share = value - Math.floor(value);
    return score(down * share, up * (1 - share));
  }

  /** Takes in what both sides gained; returns their score. */
  note({ column, value }: Fraction, [down, up]: readonly [down: number, up: number]): number {
    const before = this.known.get(column) ?? { down: 0, up: 0, times: 0 };
    const share = value - Math.floor(value);
    const times = before.times + 1;
    const mean = (old: number, fresh: number) => old + (fresh - old) / times;
    this.known.set(column, {
      down: mean(before.down, down / share),
      up: mean(before.up, up / (1 - share)),
      times,
    });
    return score(down, up);
  }
}

function score(down: number, up: number): number {
  return Math.max(LEAST, down) * Math.max(LEAST, up);
}
