/** Water that plants lose and rain that falls, for irrigation and tanks. */
export interface Weather {
  /** Station and years. */
  readonly source: string;
  /** January first, twelve of them. */
  readonly months: readonly MonthOfWeather[];
  /** Rain of days in a row. Left out: no tank can be balanced. */
  readonly daily?: DailyRain;
}

export interface MonthOfWeather {
  /** Reference evapotranspiration of the month, inches. */
  readonly referenceInches: number;
  readonly rainInches: number;
}

export interface DailyRain {
  /** ISO date of the first day. */
  readonly firstDay: string;
  readonly inches: readonly number[];
}

/** A tank that a roof fills. Not for food plants without treatment. */
export interface RainTank {
  readonly gallons: number;
  readonly openingGallons: number;
  readonly roofSqFt: number;
  /** Inches of each day's rain that are turned away before the tank fills. */
  readonly firstFlushInches: number;
}
