import type { Campus } from '#domain/campus.js';
import type { SolveReport } from '#domain/tier.js';
import { benefitPlace, tiersOf } from '../tiers/tier-list.js';
import { tierResult } from './tier-report.js';

/** The report of a solve that was ended from outside: its best values, with no bounds but the plain ones. */
export function reportCutShort(
  campus: Campus,
  values: readonly number[],
  ending: 'time-limit' | 'cancelled',
): SolveReport {
  const all = tiersOf(campus);
  const tiers = all.map((tier, i) =>
    tierResult(tier, values[i] ?? 0, i < benefitPlace(all) ? 0 : null),
  );
  return { ending, tiers, conflict: [] };
}
