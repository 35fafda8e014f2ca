import type { Known } from '#units/known.js';
import type { Finding } from '../finding.js';
import { type Breakpoint, worthOf } from './value-function.js';

/** One thing that makes a place suitable, with its weight and value function. */
export interface Criterion {
  readonly id: string;
  readonly weight: number;
  readonly breakpoints: readonly Breakpoint[];
}

/** What each criterion adds to a score. An unknown fact adds between 0 and its weight. */
export interface Contribution {
  readonly criterion: string;
  readonly weight: number;
  readonly worth: Known<number>;
}

export interface Score {
  readonly contributions: readonly Contribution[];
  /** Least score, were every unknown fact at its worst. Equal to `most` where all is known. */
  readonly least: number;
  readonly most: number;
}

/** Weighted additive value: S = sum of w v(x), weights adding up to 1. Source: R. L. Keeney and H. Raiffa, 1976. */
export function scoreOf(
  criteria: readonly Criterion[],
  facts: Readonly<Record<string, Known<number>>>,
): Score {
  const contributions = criteria.map(({ id, weight, breakpoints }): Contribution => {
    const fact = facts[id];
    const worth: Known<number> = fact?.known
      ? { known: true, value: worthOf(fact.value, breakpoints) }
      : { known: false };
    return { criterion: id, weight, worth };
  });
  return {
    contributions,
    least: contributions.reduce(
      (sum, c) => sum + c.weight * (c.worth.known ? c.worth.value : 0),
      0,
    ),
    most: contributions.reduce((sum, c) => sum + c.weight * (c.worth.known ? c.worth.value : 1), 0),
  };
}

/** Rejects weights that are negative or do not total 1 (to one in a million). */
export function weightFindings(criteria: readonly Pick<Criterion, 'weight'>[]): Finding[] {
  const total = criteria.reduce((sum, { weight }) => sum + weight, 0);
  if (criteria.every(({ weight }) => weight >= 0) && Math.abs(total - 1) <= 1e-6) return [];
  return [
    {
      field: 'weights',
      value: total,
      severity: 'reject',
      problem: `weights total ${total.toFixed(4)}, or one is negative`,
      remedy: 'Make the weights of all criteria add up to 1.',
    },
  ];
}
