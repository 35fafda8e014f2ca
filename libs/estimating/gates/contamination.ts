import type { Known } from '#units/known.js';
import { failed, type GateFrame, type GateResult, passed, unknown } from './gate-result.js';

/** How the food, if any, would be grown. */
export type Growing = 'food in the ground' | 'food in raised beds' | 'ornamental';

export interface SoilLead {
  readonly growing: Growing;
  readonly leadMgPerKg: Known<number>;
  /** Age of the test in years; unknown where no test is dated. */
  readonly testAgeYears: Known<number>;
}

export interface LeadRule {
  readonly screening: number;
  readonly stop: number;
  readonly testYears: number;
}

/** Date of the federal directive whose screening and removal levels are the defaults. */
export const LEAD_LEVELS_AS_OF = '2025-10-16';

const FRAME: GateFrame = {
  kind: 'contamination',
  ask: 'environmental health and safety office',
  asOf: LEAD_LEVELS_AS_OF,
};

/**
 * Lead screening: below `screening` food may grow in the ground, from there to below `stop` only in raised beds on
 * imported soil or not at all, from `stop` on nothing is built. Screening levels are not clearance and
 * not garden-safety limits; states differ. Source: EPA Residential Lead Directive, 16 October 2025 (200 and 600).
 */
export function contaminationGate(soil: SoilLead, rule: LeadRule): GateResult {
  const { leadMgPerKg: lead, growing, testAgeYears: age } = soil;
  if (!lead.known) {
    return unknown(FRAME, 'Soil lead is unknown.', 'Composite samples of at least 8 cores.');
  }
  if (age.known && age.value > rule.testYears) {
    return unknown(
      FRAME,
      `The soil test is ${Math.floor(age.value)} years old.`,
      'A new soil test.',
    );
  }
  const found = `Lead ${lead.value} mg/kg (screening ${rule.screening}, stop ${rule.stop}).`;
  if (lead.value >= rule.stop) {
    return failed(FRAME, found, 'A decision on removal by environmental health and safety.');
  }
  if (lead.value >= rule.screening) {
    if (growing === 'food in the ground') {
      return failed(FRAME, found, 'Raised beds with imported soil and a barrier, or no food.');
    }
    return unknown(FRAME, found, 'Written agreement of environmental health and safety.');
  }
  if (!age.known)
    return unknown(FRAME, `${found} No test of it is dated.`, 'The date of the test.');
  return passed(
    FRAME,
    found,
    'Screening result, not a clearance: environmental health and safety decides.',
  );
}
