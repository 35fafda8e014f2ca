/**
 * Moves positions apart until neighbors in order of size are at least `gap` apart and all lie
 * between `low` and `high`, moving each as little as its neighbors allow. If they do not all fit,
 * they are spaced evenly over the range. The answer keeps the order of the input.
 */
export function spread(
  wishes: readonly number[],
  gap: number,
  [low, high]: readonly [number, number],
): readonly number[] {
  const count = wishes.length;
  const step = count > 1 ? Math.min(gap, (high - low) / (count - 1)) : 0;
  const order = wishes.map((_, index) => index).sort((a, b) => at(wishes, a) - at(wishes, b));
  const placed: number[] = [];
  order.forEach((index, rank) => {
    const before = placed[rank - 1];
    const least = before === undefined ? low : before + step;
    placed.push(Math.max(at(wishes, index), least));
  });
  for (let rank = count - 1; rank >= 0; rank -= 1) {
    const most = rank === count - 1 ? high : at(placed, rank + 1) - step;
    placed[rank] = Math.min(at(placed, rank), most);
  }
  const result = [...wishes];
  order.forEach((index, rank) => (result[index] = at(placed, rank)));
  return result;
}

function at(values: readonly number[], index: number): number {
  return values[index] ?? 0;
}
