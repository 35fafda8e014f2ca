import { COMPONENTS, type Component, type ComponentShares } from '#domain/component.js';
import type { Finding } from '../finding.js';

/** Square feet of each component of a site: area x share. */
export function componentAreas(
  areaSqFt: number,
  shares: ComponentShares,
): Record<Component, number> {
  const areas = {} as Record<Component, number>;
  for (const component of COMPONENTS) areas[component] = areaSqFt * shares[component];
  return areas;
}

/** Rejects shares that are negative or do not total 1 (to one in a million). */
export function componentShareFindings(shares: ComponentShares): Finding[] {
  const values = COMPONENTS.map((component) => shares[component]);
  const total = values.reduce((a, b) => a + b, 0);
  if (values.every((share) => share >= 0) && Math.abs(total - 1) <= 1e-6) return [];
  return [
    {
      field: 'shares',
      value: total,
      severity: 'reject',
      problem: `component shares total ${total.toFixed(4)}, or one is negative`,
      remedy: 'Make the component areas add up to the area of the site.',
    },
  ];
}
