/** A repeatable stream of numbers from 0 (included) to 1 (excluded). */
export type Random = () => number;

/** The stream of a seed: Mulberry32 (T. Ettinger, public domain), 32-bit state. From memory. */
export function seededRandom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A whole number from 0 (included) to `below` (excluded). */
export function randomBelow(random: Random, below: number): number {
  return Math.floor(random() * below);
}

/** The items in a random order; the list given is left as it is. */
export function shuffled<T>(random: Random, items: readonly T[]): T[] {
  const list = [...items];
  for (let i = list.length - 1; i > 0; i--) {
    const j = randomBelow(random, i + 1);
    const [a, b] = [list[i], list[j]];
    if (a !== undefined && b !== undefined) [list[i], list[j]] = [b, a];
  }
  return list;
}
