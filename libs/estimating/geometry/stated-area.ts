import type { Finding } from '../finding.js';

/** A stated area may differ from the drawn one by this part of the drawn one before it is questioned. */
export const STATED_AREA_TOLERANCE = 0.05;

export interface StatedArea {
  readonly site: string;
  readonly drawnSqFt: number;
  readonly statedSqFt: number;
}

/** Warns where the stated area is more than 5 % off the drawn one. Planning keeps the drawn area. */
export function statedAreaFindings({ site, drawnSqFt, statedSqFt }: StatedArea): Finding[] {
  if (Math.abs(statedSqFt - drawnSqFt) <= STATED_AREA_TOLERANCE * drawnSqFt) return [];
  return [
    {
      field: 'areaSqFt',
      value: statedSqFt,
      severity: 'warn',
      problem: `${site}: the drawn boundary is ${whole(drawnSqFt)} sf but the stated area is ${whole(statedSqFt)} sf`,
      remedy: 'Planning uses the drawn area until you confirm.',
    },
  ];
}

function whole(value: number): string {
  return Math.round(value).toLocaleString('en-US');
}
