import type { Finding } from '../finding.js';

/** Principal that pays a yearly need: need / payout rate. Throws on a rate that is not above 0. */
export function principalNeeded(yearlyNeed: number, payoutRate: number): number {
  if (!(payoutRate > 0)) throw new RangeError('a payout rate must be above 0');
  return yearlyNeed / payoutRate;
}

/** Gift that leaves the principal after a fee at receipt: principal / (1 - fee). */
export function giftForPrincipal(principal: number, feeShare: number): number {
  return principal / (1 - feeShare);
}

export interface Payout {
  /** Market value at the end of each quarter, oldest first. */
  readonly quarterValues: readonly number[];
  readonly rate: number;
  /** Quarters averaged (12 for three years). */
  readonly averaged: number;
  /** Quarters without payout after a fund is opened, 0 or more. */
  readonly waiting: number;
}

/**
 * Yearly payout: rate x mean market value of the last quarters; of all of them while the fund is younger;
 * nothing while it waits. Source: three-year moving average rule of endowment spending policies.
 */
export function yearlyPayout({ quarterValues, rate, averaged, waiting }: Payout): number {
  if (quarterValues.length <= waiting) return 0;
  const last = quarterValues.slice(-averaged);
  return (rate * last.reduce((a, b) => a + b, 0)) / last.length;
}

/**
 * Names what a reader must know of a payout: above the prudent rate it may be presumed imprudent (an optional
 * clause of UPMIFA, 7 %), and a fund worth less than its gifts may have to pause. Policy and counsel decide.
 */
export function payoutFindings(fund: {
  readonly rate: number;
  readonly prudentRate: number;
  readonly marketValue: number;
  readonly giftsReceived: number;
}): Finding[] {
  const findings: Finding[] = [];
  const warn = (field: string, value: number, problem: string): void => {
    const remedy = 'Ask the endowment office before promising this payout.';
    findings.push({ field, value, severity: 'warn', problem, remedy });
  };
  if (fund.rate > fund.prudentRate) {
    warn('rate', fund.rate, `above ${fund.prudentRate}, which some states presume imprudent`);
  }
  if (fund.marketValue < fund.giftsReceived) {
    warn('marketValue', fund.marketValue, 'below the gifts received; payout may be suspended');
  }
  return findings;
}

export interface EndowmentRates {
  readonly payout: number;
  readonly fees: number;
  readonly costGrowth: number;
}

/** Return with which the payout keeps pace with costs: (1 + payout)(1 + fees)(1 + growth) - 1. */
export function requiredReturn({ payout, fees, costGrowth }: EndowmentRates): number {
  return (1 + payout) * (1 + fees) * (1 + costGrowth) - 1;
}
