/** A resource that the decisions of a plan ask for and that is not there. */
export interface Shortage {
  readonly resource: 'labor' | 'money' | 'compost';
  /** Running season index for labor and compost, year index for money. */
  readonly at: number;
  /** Hundredths of hours, cents, or hundredths of cubic yards. Above 0. */
  readonly amount: number;
  /** On compost: all that is there would do, and what is certified does not. */
  readonly grade?: 'certified';
}
