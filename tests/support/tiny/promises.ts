import type { Commitment, CommitmentTest, Strength } from '#domain/commitment.js';
import { fiscalYear } from '#units/fiscal-year.js';

/** A promise with nothing but its test and strength of interest. */
export function promise(id: string, strength: Strength, test: CommitmentTest): Commitment {
  return {
    id,
    name: id,
    strength,
    test,
    saidBy: 'a test',
    saidTo: 'a test',
    date: '2026-01-01',
    document: 'none',
    public: false,
    points: strength === 'aspiration' ? 50 : 0,
  };
}

/** One site in each year from one to another, both included. */
export function siteAYear(from: number, to: number): CommitmentTest {
  return {
    kind: 'sites-each-year',
    count: 1,
    from: fiscalYear(from),
    to: fiscalYear(to),
    countsFromSqFt: 1000,
  };
}
