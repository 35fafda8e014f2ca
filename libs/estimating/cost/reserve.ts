/** Something that wears out. Dollars of the price year; life in years, above 0. */
export interface Replaceable {
  readonly name: string;
  readonly cost: number;
  readonly lifeYears: number;
}

/** Yearly saving for replacements: sum of cost / life. Throws on a life that is not above 0. */
export function replacementReserve(parts: readonly Replaceable[]): number {
  return parts.reduce((sum, { name, cost, lifeYears }) => {
    if (!(lifeYears > 0)) throw new RangeError(`the life of ${name} must be above 0 years`);
    return sum + cost / lifeYears;
  }, 0);
}
