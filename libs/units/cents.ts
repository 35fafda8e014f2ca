/** A whole number of cents. Never a fraction, never the result of an unrounded float division. */
export type Cents = number & { readonly unit: 'cents' };

/** Marks a whole number as cents; `cents(12_50)` is $12.50. Throws on a fraction. */
export function cents(value: number): Cents {
  if (!Number.isSafeInteger(value)) {
    throw new RangeError(`cents must be a whole number, got ${value}`);
  }
  return value as Cents;
}

/** Nearest cent to a dollar amount, halves away from zero. */
export function dollarsToCents(dollars: number): Cents {
  return roundCents(dollars * 100);
}

/** Nearest whole cent, halves away from zero. */
export function roundCents(amount: number): Cents {
  return cents(Math.sign(amount) * Math.round(Math.abs(amount)) + 0);
}

/** Dollars as a plain number, for display only. */
export function centsToDollars(amount: Cents): number {
  return amount / 100;
}

export function sumCents(amounts: Iterable<Cents>): Cents {
  let total = 0;
  for (const amount of amounts) total += amount;
  return cents(total);
}

/** Cents times a rate (escalation, share), rounded to the nearest cent. */
export function scaleCents(amount: Cents, factor: number): Cents {
  return roundCents(amount * factor);
}

/** A percentage of an amount, rounded to the nearest cent. Divided last, so that half cents come out as such. */
export function percentOf(amount: Cents, percent: number): Cents {
  return roundCents((amount * percent) / 100);
}
