/** A fact that may not have been observed. Unknown is a value of its own, never zero. */
export type Known<T> = { readonly known: true; readonly value: T } | { readonly known: false };

export const UNKNOWN: Known<never> = { known: false };

export function known<T>(value: T): Known<T> {
  return { known: true, value };
}

/** The value where it is known, else what the caller states to assume. */
export function valueOr<T>(fact: Known<T>, assumed: T): T {
  return fact.known ? fact.value : assumed;
}
