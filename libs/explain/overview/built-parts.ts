import { preparedYears, type Placement } from '#domain/plan.js';
import type { PlacedPart } from '#estimating/site-charges/placed-parts.js';
import { CARE_CLASSES, FINE_PARTS } from '#estimating/site-charges/type-profile.js';
import type { FiscalYear } from '#units/fiscal-year.js';
import type { Ground } from './ground.js';

/** The pieces of a site as it is built, at once or in halves, whatever a later change makes of them. */
export function builtParts(
  { charges }: Ground,
  { change: _, ...built }: Placement,
): readonly PlacedPart[] {
  return charges.parts(built);
}

/** What of it is prepared in one year: all, or one half. */
export function partsIn(
  ground: Ground,
  placement: Placement,
  year: FiscalYear,
): readonly PlacedPart[] {
  const place = preparedYears(placement).indexOf(year);
  return builtParts(ground, placement).slice(place, place + 1);
}

/** Years from the first planting of a site to that of a piece: 0, or more for a second half. */
export function yearsLaterOf(
  { campus }: Ground,
  parts: readonly PlacedPart[],
  { life }: PlacedPart,
): number {
  const first = Math.min(...parts.map((part) => part.life.planted));
  return (life.planted - first) / campus.calendar.seasons.length;
}

/** Hours of care and harvest of a piece in a year of age, all seasons; 0 before it is planted. */
export function partHours({ campus }: Ground, { charges }: PlacedPart, age: number): number {
  if (age < 1) return 0;
  const { areaSqFt, profile } = charges;
  const perThousand = campus.calendar.seasons.reduce(
    (sum, _, order) => sum + CARE_CLASSES.reduce((of, c) => of + profile.care(c, age, order), 0),
    0,
  );
  return (areaSqFt * perThousand) / FINE_PARTS;
}
