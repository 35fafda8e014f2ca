/** A coefficient that was measured on this campus, in place of a planning default. */
export interface MeasuredValue {
  /** Key of the default that it replaces, for example `density.compost`. */
  readonly coefficient: string;
  readonly value: number;
  /** Unit of the value: that of the default, or its metric one. */
  readonly unit: string;
  /** How it was found, and where that is on record. */
  readonly source: string;
  /** The day it was measured. ISO date. */
  readonly date: string;
}
