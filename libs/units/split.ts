/**
 * Splits a whole number by weights and loses nothing: every share is floored, and what is left
 * over goes one by one to the largest remainders, ties to the earlier weight.
 *
 * `total` is a whole number at or above 0; weights are at or above 0 with a positive sum. Throws otherwise.
 */
export function splitWhole(total: number, weights: readonly number[]): number[] {
  const sum = weights.reduce((a, b) => a + b, 0);
  if (!Number.isSafeInteger(total) || total < 0) {
    throw new RangeError(`the total to split must be a whole number at or above 0, got ${total}`);
  }
  if (!(sum > 0) || weights.some((w) => w < 0)) {
    throw new RangeError(
      `weights must be at or above 0 with a positive sum, got ${weights.join(', ')}`,
    );
  }
  const exact = weights.map((w) => (total * w) / sum);
  const shares = exact.map(Math.floor);
  const left = total - shares.reduce((a, b) => a + b, 0);
  const order = exact
    .map((value, index) => ({ index, remainder: value - Math.floor(value) }))
    .sort((a, b) => b.remainder - a.remainder || a.index - b.index);
  for (const { index } of order.slice(0, left)) shares[index] = (shares[index] ?? 0) + 1;
  return shares;
}
