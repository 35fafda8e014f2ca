/** Pounds in a short ton, exact. A metric ton is 2,204.62 lb: say which one a record means. */
export const POUNDS_PER_SHORT_TON = 2000;

export interface Meals {
  readonly mealsPerDay: number;
  readonly daysPerYear: number;
  readonly poundsPerMeal: number;
}

/** Food waste of a year in short tons: meals x days x pounds / 2,000. */
export function foodWasteTons({ mealsPerDay, daysPerYear, poundsPerMeal }: Meals): number {
  return (mealsPerDay * daysPerYear * poundsPerMeal) / POUNDS_PER_SHORT_TON;
}

export interface Composting {
  readonly foodTons: number;
  /** Part of the food waste that reaches the compost yard, 0 to 1. */
  readonly capture: number;
  /** Tons of bulking (chips, leaves) for each ton captured. */
  readonly bulkingPerTon: number;
  /** Finished mass over mass put in, 0 to 1. */
  readonly massYield: number;
  readonly poundsPerCuYd: number;
  /** Part of the finished compost that the program gets, 0 to 1. */
  readonly shareToProgram: number;
}

/** Cubic yards a year: (food x capture + bulking) x mass yield x 2,000 / density x share. */
export function compostMadeCuYd(composting: Composting): number {
  const captured = composting.foodTons * composting.capture;
  const finished = captured * (1 + composting.bulkingPerTon) * composting.massYield;
  const cubicYards = (finished * POUNDS_PER_SHORT_TON) / composting.poundsPerCuYd;
  return cubicYards * composting.shareToProgram;
}
