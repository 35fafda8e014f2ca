import type { Campus } from '#domain/campus.js';
import type { Gate, GateKind, Site } from '#domain/site.js';
import type { SiteSurvey } from '#domain/survey.js';
import { known, UNKNOWN, type Known } from '#units/known.js';
import { coefficient, type Overrides } from '../defaults/coefficients.js';
import { overridesAt } from '../defaults/overrides-at.js';
import { accessGate } from './access.js';
import { accessibilityGate } from './accessibility.js';
import { contaminationGate } from './contamination.js';
import type { GateResult } from './gate-result.js';
import { rootProtectionGate } from './root-protection.js';
import { slopeGate } from './slope.js';
import { utilitiesGate } from './utilities.js';

/** Gates that are decided by measures of the site. */
export type MeasuredKind = Extract<
  GateKind,
  'contamination' | 'utilities' | 'root-protection' | 'slope' | 'access' | 'accessibility'
>;

/** What the measures of a site say of one gate, and the build types that it would bar. */
export interface MeasuredGate {
  readonly result: GateResult & { readonly kind: GateKind };
  readonly bars: Exclude<Gate['bars'], readonly string[]>;
}

/** What the facts, trees and survey of a site say of its gates. Contamination is told for food in the ground. */
export function measuredGates(
  campus: Pick<Campus, 'overrides' | 'calendar'>,
  site: Site,
): Readonly<Record<MeasuredKind, MeasuredGate>> {
  const overrides = overridesAt(campus, site);
  const { facts, survey = NO_SURVEY } = site;
  const forAll = (result: GateResult): MeasuredGate => ({ result, bars: 'all' });
  return {
    contamination: contamination(campus, site, overrides),
    utilities: forAll(
      utilitiesGate({
        found: survey.utilityLines,
        digInches: survey.digInches,
        marked: survey.marksInForce,
      }),
    ),
    'root-protection': forAll(
      rootProtectionGate({
        protectedShare: facts.rootProtectedShare,
        limitShare: coefficient('gate.root-share', overrides),
        arboristAgreed: survey.arboristAgreed,
      }),
    ),
    slope: forAll(
      slopeGate({
        slopePercent: facts.slopePercent,
        limitPercent: coefficient('gate.slope', overrides),
      }),
    ),
    access: forAll(
      accessGate({
        truckWidthFt: survey.truckWidthFeet,
        leastWidthFt: coefficient('gate.truck-width', overrides),
        bearsTruck: survey.groundBearsTruck,
      }),
    ),
    accessibility: forAll(accessibility(survey, overrides)),
  };
}

function contamination(
  { calendar }: Pick<Campus, 'calendar'>,
  site: Site,
  overrides: Overrides,
): MeasuredGate {
  const lead = site.facts.leadMgPerKg;
  const stop = coefficient('gate.lead-stop', overrides);
  const result = contaminationGate(
    {
      growing: 'food in the ground',
      leadMgPerKg: lead,
      testAgeYears: soilTestAge(site, calendar.planningDate),
    },
    {
      screening: coefficient('gate.lead-screening', overrides),
      stop,
      testYears: coefficient('gate.soil-test-years', overrides),
    },
  );
  return { result, bars: lead.known && lead.value >= stop ? 'all' : 'edible' };
}

const DAYS_PER_YEAR = 365.25;
const MILLISECONDS_PER_DAY = 86_400_000;

/** Years from the newest dated soil test to the day of planning. */
function soilTestAge({ evidence }: Site, planningDate: string): Known<number> {
  const tests = evidence.filter(({ fact, value }) => /lead|soil/i.test(`${fact} ${value}`));
  const newest = tests
    .map(({ date }) => date)
    .sort()
    .at(-1);
  if (newest === undefined) return UNKNOWN;
  const days = (Date.parse(planningDate) - Date.parse(newest)) / MILLISECONDS_PER_DAY;
  return known(days / DAYS_PER_YEAR);
}

function accessibility({ route }: SiteSurvey, overrides: Overrides): GateResult {
  return accessibilityGate(
    {
      clearWidthInches: route.clearWidthInches,
      passingEveryFt: route.passingEveryFeet,
      runningSlopePercent: route.runningSlopePercent,
      crossSlopePercent: route.crossSlopePercent,
      firmAndStable: route.firmAndStable,
    },
    {
      clearWidthInches: coefficient('gate.route-width', overrides),
      passingEveryFt: coefficient('gate.route-passing-every', overrides),
      runningSlopePercent: coefficient('gate.route-running-slope', overrides),
      crossSlopePercent: coefficient('gate.route-cross-slope', overrides),
    },
  );
}

const NO_SURVEY: SiteSurvey = {
  truckWidthFeet: UNKNOWN,
  groundBearsTruck: UNKNOWN,
  arboristAgreed: UNKNOWN,
  utilityLines: UNKNOWN,
  marksInForce: UNKNOWN,
  digInches: UNKNOWN,
  route: {
    clearWidthInches: UNKNOWN,
    passingEveryFeet: UNKNOWN,
    runningSlopePercent: UNKNOWN,
    crossSlopePercent: UNKNOWN,
    firmAndStable: UNKNOWN,
  },
};
