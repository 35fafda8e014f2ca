import { COMPONENTS, type Component } from '#domain/component.js';
import { coefficient, type Overrides } from '../defaults/coefficients.js';
import type { CareDecay } from './decay.js';

/** Care of one component as the defaults and the campus's own values have it. */
export function careOf(component: Component, overrides: Overrides = {}): CareDecay {
  return {
    firstYearHours: coefficient(`care.${component}.first-year`, overrides),
    matureHours: coefficient(`care.${component}.mature`, overrides),
    decayPerYear: coefficient(`care.${component}.decay`, overrides),
  };
}

/** Care of every component. */
export function careOfComponents(overrides: Overrides = {}): Record<Component, CareDecay> {
  const care = {} as Record<Component, CareDecay>;
  for (const component of COMPONENTS) care[component] = careOf(component, overrides);
  return care;
}
