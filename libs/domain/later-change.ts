import type { Cents } from '#units/cents.js';
import type { Provenance } from './component.js';

/** Ages of a site, in years, at which it may be simplified or returned: a short list keeps plans few. */
export const CHANGE_AGES = [5, 8, 10, 12, 15, 20] as const;
export type ChangeAge = (typeof CHANGE_AGES)[number];

/** A way in which a built site may be changed later: to a type that asks for less care, or to lawn. */
export interface LaterChange {
  readonly id: string;
  readonly name: string;
  /** What it becomes, planted anew. Left out: it is returned to lawn and leaves the program's care. */
  readonly buildType?: string;
  /** Build types that may be changed so. */
  readonly from: 'any' | readonly string[];
  readonly ages: readonly ChangeAge[];
  /** Cost of the change per square foot in the price year; care money pays it. */
  readonly costPerSqFt: Cents;
  /** Hours of planting work that the change takes, per 1,000 sf, in the planting season. */
  readonly hoursPer1000SqFt: number;
  readonly provenance: Provenance;
}
