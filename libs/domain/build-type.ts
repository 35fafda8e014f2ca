import type { Cents } from '#units/cents.js';
import type { Component, ComponentShares, Provenance } from './component.js';

/** What a site can become: the variant that a campus may choose for it. */
export interface BuildType {
  readonly id: string;
  readonly name: string;
  /** Grows food in the ground: contamination gates apply to it. */
  readonly edible: boolean;
  readonly shares: ComponentShares;
  /** Loose compost laid at the build, in inches by component. */
  readonly compostInches: Readonly<Record<Component, number>>;
  /** Loose wood chips laid at the build, in inches by component. */
  readonly chipInches: Readonly<Record<Component, number>>;
  /** Hours to prepare (mow, cover, spread), per 1,000 sf, as volunteers work. */
  readonly prepareHoursPer1000SqFt: number;
  /** Hours to plant, per 1,000 sf, as volunteers work. */
  readonly plantHoursPer1000SqFt: number;
  /** Capital cost per square foot in the price year, contingency included, purchased compost not. */
  readonly costPerSqFt: Cents;
  readonly provenance: Provenance;
}

/** Share of a site that is planted bed, 0 to 1. */
export function bedShare(shares: ComponentShares): number {
  return shares['annual-bed'] + shares['perennial-bed'] + shares.woody + shares['rain-garden'];
}
