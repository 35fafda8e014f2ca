import type { Known } from '#units/known.js';

/** A tree whose roots may reach into a site. */
export interface SiteTree {
  /** What it is called on the map. */
  readonly name: string;
  readonly position: readonly [longitude: number, latitude: number];
  /** Trunk diameter at breast height (4.5 ft), inches. */
  readonly trunkInches: number;
}

/** A line in the ground, from records or found by the locator. */
export interface UtilityLine {
  readonly kind: string;
  readonly owner: string;
  /** Depth of cover in inches. */
  readonly depthInches: Known<number>;
}

/** What a walk, a locate or an office has found out about gates. */
export interface SiteSurvey {
  /** Narrowest width on the way of a truck to the tipping point. */
  readonly truckWidthFeet: Known<number>;
  /** Whether vaults, cellars and tunnels under that way bear a loaded truck. */
  readonly groundBearsTruck: Known<boolean>;
  readonly arboristAgreed: Known<boolean>;
  readonly utilityLines: Known<readonly UtilityLine[]>;
  /** Marks are on the ground, with a ticket in force. */
  readonly marksInForce: Known<boolean>;
  /** Deepest disturbance of the work, inches; 0 where nothing is dug. */
  readonly digInches: Known<number>;
  readonly route: {
    readonly clearWidthInches: Known<number>;
    readonly passingEveryFeet: Known<number>;
    readonly runningSlopePercent: Known<number>;
    readonly crossSlopePercent: Known<number>;
    readonly firmAndStable: Known<boolean>;
  };
}
