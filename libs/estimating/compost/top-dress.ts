import { layerCuYd } from '../takeoff/layers.js';

/** Cubic yards a year on the planted ground of a site. */
export function topDressCuYd(plantedSqFt: number, depthInches: number): number {
  return layerCuYd({ areaSqFt: plantedSqFt, depthInches, waste: 0 });
}

export interface CompostBudget {
  readonly madePerYear: number;
  readonly newSitePerYear: number;
  readonly topDressPerSite: number;
}

/** Older sites that production can top-dress beside one new site a year, not whole. */
export function sitesTopDressedBesideANewOne(budget: CompostBudget): number {
  return (budget.madePerYear - budget.newSitePerYear) / budget.topDressPerSite;
}
