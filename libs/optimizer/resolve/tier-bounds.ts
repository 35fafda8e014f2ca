import type { Ground } from '../columns/add-columns.js';
import { relaxationBound } from '../solve/solve-tier.js';
import { tierResult } from '../solve/tier-report.js';
import { benefitPlace, tiersOf } from '../tiers/tier-list.js';
import type { ResolveMeans } from './means.js';

/**
 * How good a plan could be in each tier up to benefit, by its relaxation, with the tiers before it held
 * at the values given: so a bound holds for plans that are as good in those.
 */
export function tierBounds(
  ground: Ground,
  values: readonly number[],
  { solver }: Pick<ResolveMeans, 'solver'>,
): (number | null)[] {
  const tiers = tiersOf(ground.campus);
  return tiers.map((tier, place) => {
    if (place > benefitPlace(tiers)) return null;
    const value = values[place] ?? 0;
    if (tier.sense === 'min' && value <= tier.tolerance) return 0;
    const held = new Map(tiers.slice(0, place).map((t, i) => [t.name, values[i] ?? 0]));
    const bound = relaxationBound({
      ...{ ground, solver, held, seed: 1, limits: {} },
      tier: tier.name,
      shouldStop: () => false,
    });
    if (bound === 'infeasible')
      throw new Error(`no bound of ${tier.name}: its values admit no plan`);
    return tierResult(tier, value, bound).bound;
  });
}
