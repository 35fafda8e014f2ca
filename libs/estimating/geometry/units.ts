/** Square meters in one square foot, exact: (0.3048 m) squared. */
export const SQUARE_METERS_PER_SQUARE_FOOT = 0.09290304;

/** Meters in one foot, exact since 1959. */
export const METERS_PER_FOOT = 0.3048;
