export interface Crops {
  readonly bedSqFt: number;
  readonly poundsPerSqFt: number;
  /** Share of a full crop at the age of the planting, 0 to 1. */
  readonly bearing: number;
  /** Part lost to weather, wildlife, theft and culls, 0 to 1. */
  readonly losses: number;
}

/** Pounds that reach the kitchen door in a year: bed x yield x bearing x (1 - losses). */
export function harvestPounds({ bedSqFt, poundsPerSqFt, bearing, losses }: Crops): number {
  return bedSqFt * poundsPerSqFt * bearing * (1 - losses);
}

/** Meals for which the produce is enough, at so many pounds a meal. */
export function mealsOf(pounds: number, poundsPerMeal: number): number {
  return pounds / poundsPerMeal;
}
