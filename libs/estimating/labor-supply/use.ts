import type { Finding } from '../finding.js';

export interface PoolUse {
  readonly pool: string;
  readonly season: string;
  readonly neededHours: number;
  readonly hours: number;
  /** Use from which a warning is due, 0 to 1. */
  readonly warnAt: number;
}

/** Nobody is planned above 100 %: more is rejected, and use at or above the warning share is named. */
export function useFindings({ pool, season, neededHours, hours, warnAt }: PoolUse): Finding[] {
  const field = `${pool}, ${season}`;
  if (neededHours > hours) {
    const problem = `${neededHours.toFixed(0)} h are needed of ${hours.toFixed(0)} h`;
    const remedy = 'Add hours, move work to another season, or leave care unserved in the open.';
    return [{ field, value: neededHours, severity: 'reject', problem, remedy }];
  }
  if (neededHours < warnAt * hours) return [];
  const percent = Math.round((100 * neededHours) / hours);
  const problem = `${percent} % of the hours are planned; illness or rain would break the season`;
  return [
    { field, value: neededHours, severity: 'warn', problem, remedy: 'Keep some hours free.' },
  ];
}
