/**
 * Who comes of those who signed up. With `showSpread` 0 each comes with `showRate` on its own (binomial);
 * above 0 the show rate of the day itself varies (beta, with that standard deviation), as weather makes it.
 */
export interface Turnout {
  readonly signUps: number;
  readonly showRate: number;
  readonly showSpread: number;
}

/** Chance that at least `present` people come. */
export function chanceOfAtLeast(present: number, turnout: Turnout): number {
  if (present <= 0) return 1;
  let chance = 0;
  for (let come = present; come <= turnout.signUps; come += 1) chance += chanceOf(come, turnout);
  return Math.min(1, chance);
}

/** Chance that exactly `come` people come: binomial, or beta-binomial where the rate itself varies. */
export function chanceOf(come: number, { signUps, showRate, showSpread }: Turnout): number {
  const ways = logChoose(signUps, come);
  if (showSpread === 0) {
    if (showRate <= 0 || showRate >= 1) return come === Math.round(showRate) * signUps ? 1 : 0;
    const log = ways + come * Math.log(showRate) + (signUps - come) * Math.log(1 - showRate);
    return Math.exp(log);
  }
  const { alpha, beta } = betaOf(showRate, showSpread);
  return Math.exp(ways + logBeta(come + alpha, signUps - come + beta) - logBeta(alpha, beta));
}

/** Beta parameters of a mean and a standard deviation: s = m (1 - m) / sd^2 - 1. Throws where none fit. */
export function betaOf(mean: number, spread: number): { alpha: number; beta: number } {
  const strength = (mean * (1 - mean)) / spread ** 2 - 1;
  if (!(strength > 0)) {
    throw new RangeError(`no beta distribution has mean ${mean} and standard deviation ${spread}`);
  }
  return { alpha: mean * strength, beta: (1 - mean) * strength };
}

function logChoose(n: number, k: number): number {
  return logGamma(n + 1) - logGamma(k + 1) - logGamma(n - k + 1);
}

function logBeta(a: number, b: number): number {
  return logGamma(a) + logGamma(b) - logGamma(a + b);
}

/** Natural logarithm of the gamma function above 0: Stirling's series at x + 10, stepped down. */
export function logGamma(x: number): number {
  let shift = 0;
  let at = x;
  for (; at < 10; at += 1) shift += Math.log(at);
  const inverse = 1 / (at * at);
  const series = (1 / 12 - inverse * (1 / 360 - inverse * (1 / 1260 - inverse / 1680))) / at;
  return (at - 0.5) * Math.log(at) - at + Math.log(2 * Math.PI) / 2 + series - shift;
}
