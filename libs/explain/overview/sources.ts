import { buildType, type Campus } from '#domain/campus.js';
import { COMPONENTS, type Component, type Provenance } from '#domain/component.js';
import { typical } from '#estimating/defaults/coefficients.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import { listInWords } from '#units/in-words.js';
import type { Ground } from './ground.js';
import type { NumberSource } from './plan-overview.js';

/** How each kind of number of the plan is worked out, and where its coefficients come from. */
export function sourcesOf(ground: Ground): NumberSource[] {
  const { calendar, care, escalation } = ground.campus;
  const types = basesOf(builtTypes(ground).map(({ provenance }) => provenance));
  const components = basesOf(builtComponents(ground).map((c) => care[c].provenance));
  const [low, high] = [typical('cost.class-5-low'), typical('cost.class-5-high')].map(percent);
  return [
    {
      number: 'Areas',
      how: 'inside the drawn boundary, or as stated where that agrees or was confirmed',
      source: 'campus file',
    },
    {
      number: 'Costs',
      how: `area × dollars a square foot × place, ${percent(escalation.construction)} a year from ${fiscalYearLabel(calendar.priceYear)}; AACE class 5, ${low} to +${high}`,
      source: types,
    },
    {
      number: 'Care',
      how: 'area × hours, falling from the first year’s to the mature ones, by planting and season',
      source: components,
    },
    {
      number: 'Building',
      how: 'area × hours as volunteers work; compost: area × depth, with waste',
      source: types,
    },
    {
      number: 'People there',
      how: 'hours on record; work days: sign-ups × share who come × hours × effectiveness',
      source: 'campus file',
    },
    ...measuredSource(ground.campus),
  ];
}

function measuredSource({ overrides = [], candidates, existing }: Campus): NumberSource[] {
  const here = [...candidates, ...existing].flatMap((site) => site.overrides ?? []);
  const names = [...new Set([...overrides, ...here].map(({ coefficient }) => coefficient))].sort();
  if (names.length === 0) return [];
  const how = `in place of planning defaults: ${listInWords(names.map(coefficientName))}`;
  return [{ number: 'Measured here', how, source: 'campus file, with dates' }];
}

/** `compost (density)` of the key `density.compost`. */
function coefficientName(key: string): string {
  const [of = '', ...what] = key.split('.');
  return `${what.join(' ').replaceAll('-', ' ')} (${of})`;
}

function builtTypes({ campus, plan }: Ground) {
  const placed = plan.decisions.placements.map((placement) => placement.buildType);
  const standing = campus.existing.map((site) => site.buildType);
  return [...new Set([...placed, ...standing])].map((id) => buildType(campus, id));
}

function builtComponents(ground: Ground): Component[] {
  const types = builtTypes(ground);
  return COMPONENTS.filter((component) => types.some(({ shares }) => shares[component] > 0));
}

/** `judgement (6), published (1)`: most often first. */
function basesOf(provenances: readonly Provenance[]): string {
  const counts = new Map<string, number>();
  for (const { basis } of provenances) counts.set(basis, (counts.get(basis) ?? 0) + 1);
  const sorted = [...counts].sort(([, a], [, b]) => b - a);
  return sorted.map(([basis, count]) => `${basis} (${count})`).join(', ') || 'none in this plan';
}

function percent(share: number): string {
  return `${Number((share * 100).toFixed(2))}%`;
}
