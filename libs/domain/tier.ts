/** One tier of what a plan is judged by, after a solve. Values are in `unit`. */
export interface TierResult {
  /** `unserved-peak`, `unserved-total`, `commitment:ID`, `benefit`, `recurring-cost`, `change`. */
  readonly name: string;
  readonly unit: string;
  readonly sense: 'min' | 'max';
  /** What the plan reaches. */
  readonly value: number;
  /** No plan that holds the tiers before can do better than this. `null`: no bound was sought. */
  readonly bound: number | null;
  /** |value - bound| / max(|value|, 1 unit), as a share. `null` where there is no bound. */
  readonly gap: number | null;
  /** Absolute slack within which the tier is held while later ones improve. */
  readonly tolerance: number;
  readonly proven: boolean;
}

/** Every way a solve can end. `no-plan`: it is proven that the hard rules admit none. */
export type Ending =
  | 'proven'
  | 'time-limit'
  | 'work-limit'
  | 'cancelled'
  | 'time-limit-without-plan'
  | 'work-limit-without-plan'
  | 'cancelled-without-plan'
  | 'no-plan';

/** What a solve reports beside its plan. */
export interface SolveReport {
  readonly ending: Ending;
  readonly tiers: readonly TierResult[];
  /** For `no-plan`: ids of commitments and names of limits that cannot all hold. */
  readonly conflict: readonly ConflictMember[];
}

export interface ConflictMember {
  readonly kind: 'commitment' | 'limit';
  readonly id: string;
  readonly name: string;
}

/** The tier that top-level `objective`, `bound` and `gap` repeat: the first not proven, else benefit. */
export function leadingTier(tiers: readonly TierResult[]): TierResult | undefined {
  const upToBenefit = tiers.slice(0, tiers.findIndex((t) => t.name === 'benefit') + 1);
  return upToBenefit.find((t) => !t.proven) ?? upToBenefit.at(-1);
}
