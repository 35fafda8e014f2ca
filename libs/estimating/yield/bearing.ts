export interface Bearing {
  readonly age: number;
  readonly bearsAt: number;
  readonly fullAt: number;
}

/**
 * Share of a full crop at an age: 0 before the first crop, then a straight rise to 1 at full bearing.
 *
 *     (age - bearsAt + 1) / (fullAt - bearsAt + 1), held between 0 and 1
 */
export function bearingShare({ age, bearsAt, fullAt }: Bearing): number {
  const risen = (age - bearsAt + 1) / (fullAt - bearsAt + 1);
  return Math.min(1, Math.max(0, risen));
}

/** Shares at ages 1, 2, 3 ... up to full bearing; the last one holds from there on. */
export function bearingByAge({ bearsAt, fullAt }: Omit<Bearing, 'age'>): number[] {
  return Array.from({ length: Math.max(1, Math.ceil(fullAt)) }, (_, index) =>
    bearingShare({ age: index + 1, bearsAt, fullAt }),
  );
}
