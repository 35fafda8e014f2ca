import type { CostBand } from '../../overview/plan-overview.js';

/** What gifts to one planned place can do, each figure traced to the plan's ledger. */
export interface GiftPackages {
  readonly packages: readonly GiftPackage[];
  /** Dollars of gifts and grants that the plan already spends on building this place. */
  readonly alreadyGiven: number;
  readonly build: CostBand;
  readonly payoutShare: number;
}

export interface GiftPackage {
  readonly title: string;
  readonly purpose: string;
  /** Sum of the lines. */
  readonly dollars: number;
  /** The part that pays for care. */
  readonly careDollars: number;
  readonly lines: readonly GiftLine[];
  readonly notIncluded: string;
}

/** A part of a package, rounded up to $100 from what the plan reckons. */
export interface GiftLine {
  readonly label: string;
  readonly use: 'build' | 'care';
  readonly dollars: number;
  /** What the plan reckons, to the cent. */
  readonly exact: number;
  /** How it comes about, and where it stands. */
  readonly source: string;
}
