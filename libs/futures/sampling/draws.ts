import type { Random } from '#units/random.js';

/** A standard normal number (Box and Muller 1958); takes two numbers of the stream. */
export function normal(random: Random): number {
  const radius = Math.sqrt(-2 * Math.log(1 - random()));
  return radius * Math.cos(2 * Math.PI * random());
}

/**
 * A gamma number with scale 1 (Marsaglia and Tsang 2000, "A simple method for generating gamma
 * variables"; from memory). `shape` above 0.
 */
export function gamma(random: Random, shape: number): number {
  if (shape < 1) return gamma(random, shape + 1) * (1 - random()) ** (1 / shape);
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = normal(random);
    const v = (1 + c * x) ** 3;
    if (v > 0 && Math.log(1 - random()) < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v;
  }
}

/** A beta number from two gamma numbers: a / (a + b). */
export function beta(
  random: Random,
  of: { readonly alpha: number; readonly beta: number },
): number {
  const a = gamma(random, of.alpha);
  const b = gamma(random, of.beta);
  return a / (a + b);
}

/** How many of `tries` succeed, each with chance `chance`: counted one by one. */
export function binomial(random: Random, tries: number, chance: number): number {
  let successes = 0;
  for (let i = 0; i < tries; i++) if (random() < chance) successes += 1;
  return successes;
}

/**
 * A triangular number by the inverse of its distribution. Low, likely and high may be equal.
 *
 *     F(x) = (x - a)^2 / ((b - a)(c - a)) below the likely value c, of [a, b]
 */
export function triangular(
  random: Random,
  { low, likely, high }: { readonly low: number; readonly likely: number; readonly high: number },
): number {
  const u = random();
  const width = high - low;
  if (width <= 0) return likely;
  const below = (likely - low) / width;
  return u < below
    ? low + Math.sqrt(u * width * (likely - low))
    : high - Math.sqrt((1 - u) * width * (high - likely));
}
