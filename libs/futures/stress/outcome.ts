/** What one future did to a plan. Hours are hours. */
export interface Outcome {
  readonly future: number;
  /** Care wanted, hours there to give to it, and care left undone, by running season index. */
  readonly wanted: Float32Array;
  readonly there: Float32Array;
  readonly unserved: Float32Array;
  /** Index of the year in which each commitment of the campus is first broken; -1: it is kept. */
  readonly broken: readonly number[];
  /** Sites that were built, halves among them. */
  readonly built: number;
  /** Sites of the plan that were never built. */
  readonly skipped: readonly string[];
  /** Dollars of running costs that nothing paid, over the horizon. */
  readonly unpaid: number;
  /** Cubic yards of compost that were missing, over the horizon. */
  readonly compostShort: number;
  /** Dollars of each gift that came and lapsed or were left over, by fund id; funds that did not come are left out. */
  readonly lapsed: Readonly<Record<string, number>>;
}
