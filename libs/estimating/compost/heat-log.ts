/** One day of a batch: temperature in the core, °F, and whether it was turned. */
export interface HeatDay {
  readonly fahrenheit: number;
  readonly turned: boolean;
}

export type CompostMethod = 'windrow' | 'in-vessel' | 'aerated-static-pile';

/** What a heat log must show. */
export interface HeatRule {
  readonly fahrenheit: number;
  readonly windrowDays: number;
  readonly windrowTurnings: number;
  readonly vesselDays: number;
}

/**
 * Whether a log shows the treatment: in a windrow 15 days at 55 °C or more with 5 turnings on such days;
 * in a vessel or an aerated static pile 3 days running. Source: 40 CFR 503 Appendix B.
 */
export function heatTreated(
  log: readonly HeatDay[],
  method: CompostMethod,
  rule: HeatRule,
): boolean {
  const hot = log.filter((day) => day.fahrenheit >= rule.fahrenheit);
  if (method !== 'windrow') return longestHotRun(log, rule.fahrenheit) >= rule.vesselDays;
  const turnings = hot.filter((day) => day.turned).length;
  return hot.length >= rule.windrowDays && turnings >= rule.windrowTurnings;
}

/** Longest run of days at or above a temperature. */
export function longestHotRun(log: readonly HeatDay[], fahrenheit: number): number {
  let longest = 0;
  let run = 0;
  for (const day of log) {
    run = day.fahrenheit >= fahrenheit ? run + 1 : 0;
    longest = Math.max(longest, run);
  }
  return longest;
}
