import { accessibilityGate } from '#estimating/gates/accessibility.js';
import { contaminationGate } from '#estimating/gates/contamination.js';
import { typical } from '#estimating/defaults/coefficients.js';
import { known } from '#units/known.js';
import type { OutsideCheck } from './outside-check.js';

const DIRECTIVE =
  'EPA Residential Lead Directive, 16 October 2025 (screening 200, removal management 600)';
const ADA = '2010 ADA Standards 403.3 and 403.5';

const rule = {
  screening: typical('gate.lead-screening'),
  stop: typical('gate.lead-stop'),
  testYears: typical('gate.soil-test-years'),
};

const routeRule = {
  clearWidthInches: typical('gate.route-width'),
  passingEveryFt: typical('gate.route-passing-every'),
  runningSlopePercent: typical('gate.route-running-slope'),
  crossSlopePercent: typical('gate.route-cross-slope'),
};

/** Lowest whole mg/kg at which ornamental planting gets another status than `below`. */
function firstChange(from: number, below: string): number {
  let lead = from;
  const status = (): string =>
    contaminationGate(
      { leadMgPerKg: known(lead), growing: 'ornamental', testAgeYears: known(0) },
      rule,
    ).status;
  while (status() === below) lead += 1;
  return lead;
}

function passes(widthInches: number, runningSlopePercent: number): boolean {
  const route = {
    clearWidthInches: known(widthInches),
    passingEveryFt: known(200),
    runningSlopePercent: known(runningSlopePercent),
    crossSlopePercent: known(100 / 48 - 0.001),
    firmAndStable: known(true),
  };
  return accessibilityGate(route, routeRule).status === 'pass';
}

export const gateChecks: readonly OutsideCheck[] = [
  {
    formula: 'gates',
    what: 'soil lead from which a site is no longer passed',
    ground: 'printed',
    source: DIRECTIVE,
    unit: 'mg/kg',
    expected: 200,
    tolerance: 0,
    actual: () => firstChange(0, 'pass'),
  },
  {
    formula: 'gates',
    what: 'soil lead from which nothing is built',
    ground: 'printed',
    source: DIRECTIVE,
    unit: 'mg/kg',
    expected: 600,
    tolerance: 0,
    actual: () => firstChange(200, 'unknown'),
  },
  {
    formula: 'gates',
    what: 'narrowest accessible route',
    ground: 'printed',
    source: ADA,
    unit: 'in',
    expected: 36,
    tolerance: 0,
    actual: () => [34, 35, 36, 37].find((width) => passes(width, 5)) ?? 0,
  },
  {
    formula: 'gates',
    what: 'steepest accessible route that is no ramp (1:20)',
    ground: 'printed',
    source: ADA,
    unit: '%',
    expected: 100 / 20,
    tolerance: 0,
    actual: () => [8, 7, 6, 5, 4].find((slope) => passes(36, slope)) ?? 0,
  },
];
