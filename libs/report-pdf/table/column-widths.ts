export interface ColumnWish {
  /** Share of the width, more than 0. */
  readonly weight: number;
  /** Width of its longest word with padding, in points. */
  readonly minimum: number;
}

/**
 * Widths that add up to `total`: shares by weight, but no column narrower than its longest word
 * as long as all of those fit together. Where they do not, the columns with the longest words get
 * one width, their words are cut, and every other column keeps its longest word.
 */
export function columnWidths(wishes: readonly ColumnWish[], total: number): readonly number[] {
  const least = sum(wishes.map((wish) => wish.minimum));
  return least >= total ? leveled(wishes, total) : shared(wishes, total);
}

function leveled(wishes: readonly ColumnWish[], total: number): readonly number[] {
  const rising = wishes.map((wish) => wish.minimum).sort((a, b) => a - b);
  let room = total;
  let level = 0;
  for (const [index, minimum] of rising.entries()) {
    level = room / (rising.length - index);
    if (minimum > level) break;
    room -= minimum;
  }
  return wishes.map((wish) => Math.min(wish.minimum, level));
}

function shared(wishes: readonly ColumnWish[], total: number): readonly number[] {
  let pinned = new Set<ColumnWish>();
  for (;;) {
    const free = wishes.filter((wish) => !pinned.has(wish));
    const room = total - sum([...pinned].map((wish) => wish.minimum));
    const weight = sum(free.map((wish) => wish.weight));
    const share = (wish: ColumnWish) => (wish.weight / weight) * room;
    const short = free.filter((wish) => share(wish) < wish.minimum);
    if (short.length === 0) {
      return wishes.map((wish) => (pinned.has(wish) ? wish.minimum : share(wish)));
    }
    pinned = new Set([...pinned, ...short]);
  }
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
