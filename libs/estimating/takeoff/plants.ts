/** Plants on a triangular grid against a square one of the same spacing: 2 / sqrt(3), exact (about 1.155). */
export const TRIANGULAR_FACTOR = 2 / Math.sqrt(3);

export interface Planting {
  readonly bedSqFt: number;
  readonly spacingFt: number;
  readonly grid: 'square' | 'triangular';
  /** Extra share for losses, 0 or more. */
  readonly spare: number;
}

/** Whole plants to order: ceil(bed / spacing^2 x grid factor x (1 + spare)). Throws on no spacing. */
export function plantsNeeded({ bedSqFt, spacingFt, grid, spare }: Planting): number {
  if (!(spacingFt > 0)) throw new RangeError(`plant spacing must be above 0 ft, got ${spacingFt}`);
  const perSqFt = (grid === 'triangular' ? TRIANGULAR_FACTOR : 1) / spacingFt ** 2;
  return Math.ceil(roundedOff(bedSqFt * perSqFt * (1 + spare)));
}

/** Takes off float dust, so that 200.00000000000003 plants are not ordered as 201. */
function roundedOff(count: number): number {
  return Math.round(count * 1e9) / 1e9;
}
