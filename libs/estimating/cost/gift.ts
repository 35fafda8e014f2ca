import { type Cents, scaleCents, sumCents } from '#units/cents.js';
import { splitWhole } from '#units/split.js';

export interface GiftRule {
  /** Part kept by the institution at receipt, 0 to 1. */
  readonly feeShare: number;
  /** Part of what is left that is kept for care, 0 to 1. */
  readonly careShare: number;
}

export interface GiftParts {
  readonly fee: Cents;
  readonly care: Cents;
  readonly build: Cents;
}

/** Splits a gift at receipt into fee, care share and what may be built with. Not a cent is lost. */
export function giftParts(amount: Cents, { feeShare, careShare }: GiftRule): GiftParts {
  const fee = scaleCents(amount, feeShare);
  const [care = 0, build = 0] = splitWhole(amount - fee, [careShare, 1 - careShare]);
  return { fee, care: care as Cents, build: build as Cents };
}

/** What a gift's terms allow. A list left out allows any. */
export interface GiftTerms {
  readonly sites?: readonly string[];
  readonly buildTypes?: readonly string[];
  readonly lines?: readonly string[];
  /** First and last fiscal year of use (included). */
  readonly firstYear: number;
  readonly lastYear: number;
}

export interface GiftUse {
  readonly site: string;
  readonly buildType: string;
  readonly line: string;
  readonly year: number;
}

/** Why a gift may not pay for a use; empty where it may. */
export function giftRefusals(terms: GiftTerms, use: GiftUse): string[] {
  const refusals: string[] = [];
  const listed = (list: readonly string[] | undefined, value: string): boolean =>
    list === undefined || list.includes(value);
  if (!listed(terms.sites, use.site)) refusals.push(`not for site ${use.site}`);
  if (!listed(terms.buildTypes, use.buildType)) refusals.push(`not for ${use.buildType}`);
  if (!listed(terms.lines, use.line)) refusals.push(`not for ${use.line}`);
  if (use.year < terms.firstYear) refusals.push(`not before fiscal year ${terms.firstYear}`);
  if (use.year > terms.lastYear) refusals.push(`expired with fiscal year ${terms.lastYear}`);
  return refusals;
}

/** Total of a gift's parts, for checking that nothing was lost. */
export function giftTotal({ fee, care, build }: GiftParts): Cents {
  return sumCents([fee, care, build]);
}
