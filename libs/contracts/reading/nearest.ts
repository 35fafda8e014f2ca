/** The candidate spelled most like `name`, where one is near enough to be meant; else undefined. */
export function nearest(name: string, candidates: readonly string[]): string | undefined {
  const limit = Math.max(2, Math.floor(name.length / 3));
  let best: string | undefined;
  let least = limit + 1;
  for (const candidate of candidates) {
    const distance = editDistance(name.toLowerCase(), candidate.toLowerCase());
    if (distance < least) [best, least] = [candidate, distance];
  }
  return best;
}

/** Fewest single-letter insertions, deletions and replacements from one word to the other (Levenshtein). */
export function editDistance(one: string, other: string): number {
  let row = Array.from({ length: other.length + 1 }, (_, i) => i);
  for (let i = 1; i <= one.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= other.length; j += 1) {
      const replaced = (row[j - 1] ?? 0) + (one[i - 1] === other[j - 1] ? 0 : 1);
      next.push(Math.min(replaced, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[other.length] ?? 0;
}

/** The candidates spelled most like `name`, nearest first, however far they are; ties as they came. */
export function nearestOf(name: string, candidates: readonly string[], count: number): string[] {
  return candidates
    .map((candidate) => ({
      candidate,
      distance: editDistance(name.toLowerCase(), candidate.toLowerCase()),
    }))
    .sort((a, b) => a.distance - b.distance)
    .slice(0, count)
    .map(({ candidate }) => candidate);
}
