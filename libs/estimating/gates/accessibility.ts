import type { Known } from '#units/known.js';
import { failed, type GateFrame, type GateResult, passed, unknown } from './gate-result.js';

/** A route to and through a site as designed or measured. */
export interface AccessibleRoute {
  readonly clearWidthInches: Known<number>;
  /** Longest stretch without a place 60 inches wide to pass; 0 where the route is that wide. */
  readonly passingEveryFt: Known<number>;
  readonly runningSlopePercent: Known<number>;
  readonly crossSlopePercent: Known<number>;
  /** Firm and stable when tested. Loose chips are not, until tested. */
  readonly firmAndStable: Known<boolean>;
}

export interface RouteRule {
  readonly clearWidthInches: number;
  readonly passingEveryFt: number;
  readonly runningSlopePercent: number;
  readonly crossSlopePercent: number;
}

const FRAME: GateFrame = { kind: 'accessibility', ask: 'accessibility office', asOf: '2010-09-15' };
const MEASURE = 'Measure the route, or design it, with the accessibility office.';

/**
 * Clear width 36 in, passing every 200 ft where narrower than 60 in, running slope 5 %, cross slope 1:48, firm and
 * stable. Source: 2010 ADA Standards 403. State and campus rules may ask for more.
 */
export function accessibilityGate(route: AccessibleRoute, rule: RouteRule): GateResult {
  const problems = [
    ...below('clear width (in)', route.clearWidthInches, rule.clearWidthInches),
    ...above('distance between passing places (ft)', route.passingEveryFt, rule.passingEveryFt),
    ...above('running slope (%)', route.runningSlopePercent, rule.runningSlopePercent),
    ...above('cross slope (%)', route.crossSlopePercent, rule.crossSlopePercent),
    ...(route.firmAndStable.known && !route.firmAndStable.value ? ['surface is not firm'] : []),
  ];
  if (problems.length > 0) return failed(FRAME, `Route: ${problems.join('; ')}.`, MEASURE);
  const missing = Object.entries(route).filter(([, fact]) => !(fact as Known<unknown>).known);
  if (missing.length > 0) {
    return unknown(FRAME, `${missing.length} facts of the route are not known.`, MEASURE);
  }
  return passed(FRAME, 'The route meets the numbers of the 2010 standards, section 403.', MEASURE);
}

function below(name: string, fact: Known<number>, least: number): string[] {
  return fact.known && fact.value < least
    ? [`${name} is ${fact.value}, at least ${least} needed`]
    : [];
}

function above(name: string, fact: Known<number>, most: number): string[] {
  return fact.known && fact.value > most
    ? [`${name} is ${fact.value}, at most ${most} allowed`]
    : [];
}
