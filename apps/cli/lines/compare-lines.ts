import type { ChangesAttributed } from '#explain/questions/compare/attribute-changes.js';
import type { PlansCompared } from '#explain/questions/compare/compare-plans.js';
import { madeLines } from './made-lines.js';

export function plansLines({ headline, moved }: PlansCompared): string[] {
  return [headline, ...moved.map(({ sentence }) => `  ${sentence}`)];
}

export function campusesLines({ headline, order, steps, made }: ChangesAttributed): string[] {
  if (steps.length === 0) return ['The two files ask for the same plan.'];
  return [headline, order, ...steps.map(({ sentence }) => `  ${sentence}`), '', ...madeLines(made)];
}
