/** What the ground of a site becomes. Areas of components add up to the area of the site. */
export const COMPONENTS = [
  'annual-bed',
  'perennial-bed',
  'woody',
  'rain-garden',
  'meadow',
  'path',
] as const;

export type Component = (typeof COMPONENTS)[number];

/** Components that grow food: their care is named apart, since a kitchen waits for it. */
export const FOOD_COMPONENTS: ReadonlySet<Component> = new Set(['annual-bed', 'woody']);

export type ComponentShares = Readonly<Record<Component, number>>;

/** What one component asks for, per 1,000 square feet and year at an age. */
export interface CareCoefficients {
  readonly component: Component;
  /** Hours in year 1 of care, per 1,000 sf and year. */
  readonly firstYearHours: number;
  /** Hours in the long run, per 1,000 sf and year. */
  readonly matureHours: number;
  /** Yearly rate k at which care falls towards the mature level, per year. */
  readonly decayPerYear: number;
  /** Share of the year's care in each season, by season id; adds up to 1. */
  readonly seasonShares: Readonly<Record<string, number>>;
  /** Harvest, washing and recording hours of a full crop, per 1,000 sf and year. 0 where nothing is picked. */
  readonly harvestHours: number;
  /** Share of a full crop at age 1, 2, 3 ...; the last entry holds from there on. */
  readonly bearing: readonly number[];
  readonly harvestSeasonShares: Readonly<Record<string, number>>;
  /** Supplies and renewal reserve, in dollars of the price year per 1,000 sf and year. */
  readonly suppliesDollars: number;
  /** Compost spread each year on established ground, in inches. */
  readonly topDressInches: number;
  readonly provenance: Provenance;
}

/** Where a number comes from. It is printed with the number. */
export interface Provenance {
  readonly basis: 'published' | 'common practice' | 'judgement' | 'measured' | 'campus record';
  readonly source: string;
}
