import {
  dirichletDraw,
  gammaDraw,
  normalDraw,
  randomStream,
} from '#estimating/suitability/random.js';
import { worthOf } from '#estimating/suitability/value-function.js';
import type { OutsideCheck } from './outside-check.js';

const DRAWS = 10_000;

function moments(draw: () => number): { mean: number; variance: number } {
  const values = Array.from({ length: DRAWS }, draw);
  const mean = values.reduce((a, b) => a + b, 0) / DRAWS;
  return { mean, variance: values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / DRAWS };
}

function normal(): { mean: number; variance: number } {
  const random = randomStream(11);
  return moments(() => normalDraw(random));
}

function gamma(shape: number): { mean: number; variance: number } {
  const random = randomStream(12);
  return moments(() => gammaDraw(shape, random));
}

function dirichlet(): { mean: number; variance: number } {
  const random = randomStream(13);
  return moments(() => dirichletDraw([0.2, 0.3, 0.5], 50, random)[0] ?? 0);
}

/** Five standard errors of the estimate. */
const within = (deviation: number): number => (5 * deviation) / Math.sqrt(DRAWS);

/** Share of gamma draws of shape 2.5 whose double is below a chi-square of 5 degrees of freedom. */
function below(chiSquare: number): number {
  const random = randomStream(14);
  const draws = Array.from({ length: DRAWS }, () => 2 * gammaDraw(2.5, random));
  return draws.filter((draw) => draw < chiSquare).length / DRAWS;
}

const CHI_SQUARES = [
  [1.145, 0.05],
  [4.351, 0.5],
  [11.07, 0.95],
] as const;

const chiSquares = CHI_SQUARES.map(([chiSquare, share]): OutsideCheck => ({
  formula: 'suitability',
  what: `share of doubled gamma draws of shape 2.5 below ${chiSquare}`,
  ground: 'printed, quoted from memory',
  source:
    'chi-square table, 5 degrees of freedom; within five standard errors of 10,000 seeded draws',
  unit: 'share',
  expected: share,
  tolerance: within(Math.sqrt(share * (1 - share))),
  actual: () => below(chiSquare),
}));

export const suitabilityChecks: readonly OutsideCheck[] = [
  ...chiSquares,
  check('mean of normal draws', [0, within(1)], () => normal().mean),
  check('variance of normal draws', [1, within(Math.sqrt(2))], () => normal().variance),
  check('mean of gamma draws of shape 2.5', [2.5, within(Math.sqrt(2.5))], () => gamma(2.5).mean),
  check(
    'variance of gamma draws of shape 2.5',
    [2.5, within(Math.sqrt(2 * 2.5 ** 2 + 6 * 2.5))],
    () => gamma(2.5).variance,
  ),
  check('mean of gamma draws of shape 0.2', [0.2, within(Math.sqrt(0.2))], () => gamma(0.2).mean),
  check(
    'variance of gamma draws of shape 0.2',
    [0.2, within(Math.sqrt(2 * 0.04 + 6 * 0.2))],
    () => gamma(0.2).variance,
  ),
  check(
    'mean of the first of Dirichlet weights 0.2, 0.3, 0.5 held at 50',
    [0.2, within(0.06)],
    () => dirichlet().mean,
  ),
  check('its variance, 0.2 x 0.8 / 51', [0.16 / 51, within(0.006)], () => dirichlet().variance),
  {
    formula: 'suitability',
    what: 'worth half way between two breakpoints',
    ground: 'exact identity',
    source: 'straight line',
    unit: '-',
    expected: 0.45,
    tolerance: 1e-12,
    actual: () =>
      worthOf(300, [
        [0, 0.2],
        [600, 0.7],
      ]),
  },
];

function check(
  what: string,
  [expected, tolerance]: readonly [number, number],
  actual: () => number,
): OutsideCheck {
  return {
    formula: 'suitability',
    what,
    ground: 'exact identity',
    source: 'moments of the distribution, within five standard errors of 10,000 seeded draws',
    unit: '-',
    expected,
    tolerance,
    actual,
  };
}
