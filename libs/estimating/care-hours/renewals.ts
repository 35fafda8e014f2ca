/** Something that is renewed every so many years. */
export interface Renewal {
  readonly name: string;
  /** Years between renewals; a half year (2.5) falls alternately at 3 and 2. Above 0. */
  readonly everyYears: number;
  /** What one renewal takes: hours, dollars or cubic yards, as the caller has it. */
  readonly amount: number;
}

/** True in the year of age in which a renewal falls: floor(age / every) steps up. */
export function renewalFalls({ everyYears }: Renewal, age: number): boolean {
  return Math.floor(age / everyYears) > Math.floor((age - 1) / everyYears) && age >= 1;
}

/** What falls due at an age. */
export function renewalsAt(renewals: readonly Renewal[], age: number): number {
  return renewals.reduce((sum, each) => sum + (renewalFalls(each, age) ? each.amount : 0), 0);
}

/** The same amounts spread evenly: sum of amount / years. */
export function renewalsPerYear(renewals: readonly Renewal[]): number {
  return renewals.reduce((sum, each) => sum + each.amount / each.everyYears, 0);
}
