import { plannedSeasons } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { Commitment } from '#domain/commitment.js';
import { CARE_CLASSES } from '#estimating/site-charges/type-profile.js';

/** One thing that a plan is judged by, in the order of judging. */
export interface Tier {
  readonly name: string;
  readonly unit: string;
  readonly sense: 'min' | 'max';
  /** Absolute slack within which the tier is held while later ones improve. */
  readonly tolerance: number;
  /**
   * How far the accounts may lie above the exact model: care is rounded up to hundredths of an hour
   * class by class in each season.
   */
  readonly rounding: number;
  /** For an intended commitment. */
  readonly commitment?: Commitment;
}

/** Share of the campus's benefit reference (100 points) within which benefit is held. */
const BENEFIT_TOLERANCE_POINTS = 100 * 1e-6;

/**
 * Tiers of a campus: unserved care, intended commitments in the file's order, benefit, recurring cost,
 * and where a plan was published, change from it.
 */
export function tiersOf(campus: Campus): Tier[] {
  const rounding = CARE_CLASSES.length / 100;
  return [
    { name: 'unserved-peak', unit: 'hours', sense: 'min', tolerance: 0.01, rounding },
    {
      name: 'unserved-total',
      unit: 'hours',
      sense: 'min',
      tolerance: 0.01,
      rounding: rounding * plannedSeasons(campus.calendar).length,
    },
    ...campus.commitments
      .filter((c) => c.strength === 'intended')
      .map((commitment) => ({
        name: `commitment:${commitment.id}`,
        unit: commitmentUnit(commitment),
        sense: 'min' as const,
        tolerance: 0,
        rounding: 0,
        commitment,
      })),
    {
      name: 'benefit',
      unit: 'points',
      sense: 'max',
      tolerance: BENEFIT_TOLERANCE_POINTS,
      rounding: 0,
    },
    { name: 'recurring-cost', unit: 'dollars', sense: 'min', tolerance: 0.01, rounding: 0 },
    ...(campus.published
      ? [
          {
            name: 'change',
            unit: 'weighted sites',
            sense: 'min' as const,
            tolerance: 0,
            rounding: 0,
          },
        ]
      : []),
  ];
}

function commitmentUnit({ test }: Commitment): string {
  switch (test.kind) {
    case 'sites-each-year':
    case 'named-site':
    case 'only-build-types':
    case 'zone-balance':
      return 'sites';
    case 'area':
      return 'square feet';
    case 'no-new-positions-before':
      return 'positions';
    case 'no-unserved-care':
      return 'hundredths of an hour';
  }
}

/** Place of the benefit tier: proof is asked for up to here. */
export function benefitPlace(tiers: readonly Tier[]): number {
  return tiers.findIndex((t) => t.name === 'benefit');
}
