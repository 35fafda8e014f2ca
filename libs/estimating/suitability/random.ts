/** A stream of numbers from 0 (included) to 1 (excluded). */
export type RandomStream = () => number;

/**
 * A repeatable stream from a whole-number seed: a 32-bit counter through a mixing function (mulberry32, T. Ettinger,
 * public domain). For sampling weights, not for secrets.
 */
export function randomStream(seed: number): RandomStream {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** A standard normal draw (Box and Muller, 1958). */
export function normalDraw(random: RandomStream): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

/** A gamma draw of scale 1 and a shape above 0 (Marsaglia and Tsang, 2000; below 1 raised by their remark). */
export function gammaDraw(shape: number, random: RandomStream): number {
  if (shape < 1) return gammaDraw(shape + 1, random) * (1 - random()) ** (1 / shape);
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = normalDraw(random);
    const v = (1 + c * x) ** 3;
    if (v > 0 && Math.log(1 - random()) < x ** 2 / 2 + d - d * v + d * Math.log(v)) return d * v;
  }
}

/** Weights that add up to 1, spread about `means`; a larger `concentration` keeps them nearer. */
export function dirichletDraw(
  means: readonly number[],
  concentration: number,
  random: RandomStream,
): number[] {
  const draws = means.map((mean) => (mean > 0 ? gammaDraw(mean * concentration, random) : 0));
  const total = draws.reduce((a, b) => a + b, 0);
  return draws.map((draw) => draw / total);
}
