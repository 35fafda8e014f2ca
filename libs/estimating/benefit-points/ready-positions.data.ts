import type { BenefitMeasure } from '#domain/benefit.js';

/** A position on benefit that every campus can take, by what it puts first. */
export interface ReadyPosition {
  readonly id: string;
  readonly name: string;
  /** Criteria of these measures share half of the points. */
  readonly first: readonly BenefitMeasure[];
}

/** Planning judgement, no published authority: half of all points go to what a position puts first. */
export const FIRST_SHARE = 0.5;

export const READY_POSITIONS: readonly ReadyPosition[] = [
  { id: 'teaching-first', name: 'Teaching first', first: ['teaching', 'walkers-per-day'] },
  { id: 'kitchen-first', name: 'Kitchen first', first: ['food-area'] },
  { id: 'least-care', name: 'Least care', first: ['care-avoided'] },
];
