import type { Inline } from './inline.js';

/** One labeled value, such as "Area" and "12,400 sf". An unknown value is printed in words. */
export interface Fact {
  readonly label: string;
  readonly value: Inline;
}

/** A short list of labeled values. `columns` sets them side by side to save height. */
export interface KeyFacts {
  readonly kind: 'key-facts';
  readonly facts: readonly Fact[];
  readonly columns: 1 | 2;
}

export function keyFacts(facts: readonly Fact[], columns: 1 | 2 = 1): KeyFacts {
  return { kind: 'key-facts', facts, columns };
}

export function fact(label: string, value: Inline): Fact {
  return { label, value };
}
