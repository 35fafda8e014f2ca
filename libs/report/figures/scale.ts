/** Maps a value to a position. */
export type Scale = (value: number) => number;

/** A straight scale from `domain` to `range`. A domain of no length maps to the range's start. */
export function linearScale(
  domain: readonly [number, number],
  range: readonly [number, number],
): Scale {
  const length = domain[1] - domain[0];
  const slope = length === 0 ? 0 : (range[1] - range[0]) / length;
  return (value) => range[0] + (value - domain[0]) * slope;
}

/**
 * Round axis values from 0 to at least `greatest`, in steps of 1, 2 or 5 times a power of ten,
 * with about `count` steps. A greatest value of 0 gives 0 and 1.
 */
export function axisTicks(greatest: number, count: number): readonly number[] {
  if (!(greatest > 0)) return [0, 1];
  const rough = greatest / count;
  const power = 10 ** Math.floor(Math.log10(rough));
  const factor = [1, 2, 5, 10].find((step) => step * power >= rough * (1 - 1e-9)) ?? 10;
  const step = factor * power;
  const steps = Math.ceil(greatest / step - 1e-9);
  return Array.from({ length: steps + 1 }, (_, index) => Number((index * step).toPrecision(12)));
}
