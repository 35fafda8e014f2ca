import { pbeta, pbinom } from 'lib-r-math.js';
import { describe, expect, it } from 'vitest';
import { betaOf, chanceOf } from '#estimating/install-hours/turnout.js';
import { beta, binomial, normal, triangular } from '#futures/sampling/draws.js';
import { streamOf } from '#futures/sampling/stream.js';
import { comeShare } from '#futures/sampling/world.js';

const DRAWS = 4000;

/**
 * Largest distance of a sample from a distribution (Kolmogorov 1933) that chance allows in one of ten
 * thousand samples: sqrt(-ln(0.00005) / 2n). Smaller distances than that are no sign of a mistake.
 */
const FAR = Math.sqrt(-Math.log(0.00005) / (2 * DRAWS));

function sample(draw: (random: () => number) => number): number[] {
  const random = streamOf({ seed: 7, future: 0, topic: 'work-days' });
  return Array.from({ length: DRAWS }, () => draw(random)).sort((a, b) => a - b);
}

function distance(sorted: readonly number[], cdf: (x: number) => number): number {
  return Math.max(...sorted.map((x, i) => Math.abs(cdf(x) - (i + 0.5) / sorted.length)));
}

/** For whole numbers: the distance at each value that can be drawn. */
function distanceAt(
  values: readonly number[],
  sorted: readonly number[],
  cdf: (x: number) => number,
) {
  const below = (x: number) => sorted.filter((s) => s <= x + 1e-9).length / sorted.length;
  return Math.max(...values.map((x) => Math.abs(cdf(x) - below(x))));
}

describe('draws, against the distributions of R (lib-r-math.js, a port of its nmath)', () => {
  it.each([
    [0.62, 0.1],
    [0.7, 0.05],
    [0.9, 0.2],
  ])('show rates of mean %d and spread %d are beta', (mean, spread) => {
    const of = betaOf(mean, spread);
    expect(
      distance(
        sample((r) => beta(r, of)),
        (x) => pbeta(x, of.alpha, of.beta),
      ),
    ).toBeLessThan(FAR);
    // The neighbor with a tenth more spread is told apart, so the test can fail.
    const wrong = betaOf(mean, spread * 1.25);
    expect(
      distance(
        sample((r) => beta(r, wrong)),
        (x) => pbeta(x, of.alpha, of.beta),
      ),
    ).toBeGreaterThan(FAR);
  });

  it('leavers and lost days are binomial', () => {
    const found = sample((r) => binomial(r, 10, 0.14));
    const values = Array.from({ length: 11 }, (_, k) => k);
    expect(distanceAt(values, found, (k) => pbinom(k, 10, 0.14))).toBeLessThan(FAR);
    expect(distanceAt(values, found, (k) => pbinom(k, 10, 0.17))).toBeGreaterThan(FAR);
  });

  it('who comes to a work day is beta-binomial, as sign-ups are reckoned with', () => {
    const turnout = { signUps: 14, showRate: 0.7 };
    const people = sample((r) => comeShare(turnout, { showSpread: 0.1 }, r) * 14 * 0.7);
    const cdf = (k: number) =>
      Array.from({ length: k + 1 }, (_, i) => chanceOf(i, { ...turnout, showSpread: 0.1 })).reduce(
        (sum, p) => sum + p,
        0,
      );
    const values = Array.from({ length: 15 }, (_, k) => k);
    expect(distanceAt(values, people, cdf)).toBeLessThan(FAR);
  });

  it('costs are triangular over the class 5 band', () => {
    const cdf = (x: number) => (x <= 1 ? (x - 0.7) ** 2 / 0.24 : 1 - (1.5 - x) ** 2 / 0.4);
    const found = sample((r) => triangular(r, { low: 0.7, likely: 1, high: 1.5 }));
    expect(distance(found, cdf)).toBeLessThan(FAR);
  });

  it('price shocks have mean 0 and variance 1', () => {
    const found = sample(normal);
    const mean = found.reduce((sum, x) => sum + x, 0) / DRAWS;
    const variance = found.reduce((sum, x) => sum + x * x, 0) / DRAWS;
    expect(Math.abs(mean)).toBeLessThan(4 / Math.sqrt(DRAWS));
    expect(Math.abs(variance - 1)).toBeLessThan(4 * Math.sqrt(2 / DRAWS));
  });
});
