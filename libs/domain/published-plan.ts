import type { FiscalYear } from '#units/fiscal-year.js';
import type { Hire, Placement } from './plan.js';

/** A placement as it was published. */
export interface PublishedPlacement extends Placement {
  /** People outside the program were told of it: changing it weighs more. */
  readonly announced: boolean;
}

/** The plan that the campus was last told of. A new plan keeps its frozen years and changes little else. */
export interface PublishedPlan {
  readonly name: string;
  /** ISO date. */
  readonly date: string;
  /** Last fiscal year (included) in which nothing that it decided is changed. Left out: none is frozen. */
  readonly frozenThrough?: FiscalYear;
  readonly placements: readonly PublishedPlacement[];
  readonly hires: readonly Hire[];
  /** Weight of one changed site that was announced, and of any other. Whole, 0 or more. */
  readonly announcedWeight: number;
  readonly otherWeight: number;
}
