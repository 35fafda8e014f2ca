import { qbeta, qbinom } from 'lib-r-math.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sampledQuantile, sampledShare } from '#futures/results/share.js';
import { quantileInWords, quantilesInWords, shareInWords } from '#units/sampled-in-words.js';

describe('what sampling leaves open', () => {
  it.each([
    [620, 1000],
    [50, 100],
    [7, 100],
    [970, 1000],
  ])(
    'an interval around %d of %d is near the exact one of Clopper and Pearson (R, qbeta)',
    (k, n) => {
      const { low, high } = sampledShare(k, n);
      expect(Math.abs(low - qbeta(0.025, k, n - k + 1))).toBeLessThan(0.012);
      expect(Math.abs(high - qbeta(0.975, k + 1, n - k))).toBeLessThan(0.012);
    },
  );

  it('says something also where no future differs', () => {
    expect(sampledShare(0, 1000).high).toBeCloseTo(0.0038, 4);
    expect(sampledShare(1000, 1000).low).toBeCloseTo(0.9962, 4);
  });

  it('takes the ranks of a quantile from the binomial (R, qbinom)', () => {
    const ranks = Float64Array.from({ length: 1001 }, (_, i) => i);
    const { value, low, high } = sampledQuantile(ranks, 0.1);
    expect(value).toBe(100);
    expect(Math.abs(low - qbinom(0.025, 1001, 0.1))).toBeLessThanOrEqual(2);
    expect(Math.abs(high - qbinom(0.975, 1001, 0.1))).toBeLessThanOrEqual(2);
  });

  it('tells no more digits than that', () => {
    expect(shareInWords(sampledShare(623, 1000))).toBe('62%');
    expect(shareInWords(sampledShare(62, 100))).toBe('60%');
    expect(shareInWords(sampledShare(0, 100))).toBe('none');
    expect(shareInWords(sampledShare(1, 1000))).not.toBe('0%');
    expect(quantileInWords({ value: 1283.4, low: 1260, high: 1310 })).toBe('1,280');
  });

  it('never tells a share that is farther off than the error itself', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 2000 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (n, p) => {
          const found = sampledShare(Math.round(n * p), n);
          const told = /^(\d+)%$/.exec(shareInWords(found))?.[1];
          if (told === undefined) return;
          expect(Number(told) / 100).toBeGreaterThanOrEqual(found.low - 1e-9);
          expect(Number(told) / 100).toBeLessThanOrEqual(found.high + 1e-9);
        },
      ),
    );
  });
});

it('never tells a low quantile above the middle one, however coarse its step', () => {
  const of = (value: number, low: number, high: number) => ({ value, low, high });
  const three = [of(700, 0, 3000), of(720, 719, 721), of(730, 600, 900)] as const;
  expect(three.map(quantileInWords)).toEqual(['1,000', '720', '700']);
  expect(quantilesInWords(three)).toEqual(['720', '720', '720']);
});
