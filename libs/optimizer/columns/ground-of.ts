import type { Campus } from '#domain/campus.js';
import { campusCharges } from '#estimating/site-charges/campus-charges.js';
import type { Ground } from './add-columns.js';
import { possibleLifecycles } from './lifecycles.js';

/** A campus with what its sites ask for and every life that they may have. */
export function groundOf(campus: Campus): Ground {
  const charges = campusCharges(campus);
  return { campus, charges, lifecycles: possibleLifecycles(campus, charges) };
}
