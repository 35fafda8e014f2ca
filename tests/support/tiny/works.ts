import type { ConstructionConflict } from '#domain/site.js';
import { fiscalYear } from '#units/fiscal-year.js';

/** Sure works of one fiscal year on site A, unless changed. */
export function works(
  id: string,
  from: number,
  change: Partial<ConstructionConflict> = {},
): ConstructionConflict {
  return {
    id,
    name: id,
    kind: 'footprint',
    sites: ['A'],
    from: fiscalYear(from),
    to: fiscalYear(from),
    certaintyPercent: 100,
    source: 'a test',
    ...change,
  };
}
