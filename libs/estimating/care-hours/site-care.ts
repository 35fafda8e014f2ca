import { COMPONENTS, type Component } from '#domain/component.js';
import { type CareDecay, careHoursPer1000SqFt } from './decay.js';

/** Square feet of each component; one left out is not on the site. */
export type ComponentAreas = Readonly<Partial<Record<Component, number>>>;

export type CareByComponent = Readonly<Record<Component, CareDecay>>;

export interface SiteCare {
  readonly areasSqFt: ComponentAreas;
  readonly care: CareByComponent;
  /** Years since planting, 1 in the first. */
  readonly age: number;
}

/** Hours a year of each component of a site at an age, at full care, before harvest and renewals. */
export function careHoursByComponent({
  areasSqFt,
  care,
  age,
}: SiteCare): Record<Component, number> {
  const hours = {} as Record<Component, number>;
  for (const component of COMPONENTS) {
    const area = areasSqFt[component] ?? 0;
    hours[component] = (area / 1000) * careHoursPer1000SqFt(care[component], age);
  }
  return hours;
}

/** Hours a year of the whole site at an age, at full care, before harvest and renewals. */
export function careHoursOfSite(site: SiteCare): number {
  const hours = careHoursByComponent(site);
  return COMPONENTS.reduce((sum, component) => sum + hours[component], 0);
}
