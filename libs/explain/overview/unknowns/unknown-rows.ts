import type { BenefitMeasure } from '#domain/benefit.js';
import { buildType } from '#domain/campus.js';
import type { CandidateSite, SiteFacts } from '#domain/site.js';
import type { Ground } from '../ground.js';
import type { UnknownRow } from '../plan-overview.js';
import { FACT_CHECKS } from './fact-checks.js';
import { moneyUnknowns } from './money-unknowns.js';
import { openGates } from './open-gates.js';

/**
 * All that is not known and bears on the plan: open gates of every candidate, the facts that this
 * plan's numbers rest on, and money that may not come. Sites of the plan come first, in its order.
 */
export function unknownRows(ground: Ground): UnknownRow[] {
  const { campus, placed } = ground;
  const yearOf = (site: CandidateSite) => placed.get(site.id)?.year ?? Infinity;
  const sites = [...campus.candidates].sort(
    (a, b) => yearOf(a) - yearOf(b) || (a.id < b.id ? -1 : 1),
  );
  return [
    ...sites.flatMap((site) => [
      ...openGates(ground, site),
      ...unknownFacts(site, factsThatCount(ground, site)),
    ]),
    ...moneyUnknowns(ground),
  ];
}

/** All that must be found out of one site before work starts, whether or not a number rests on it. */
export function toSettleBefore(ground: Ground, site: CandidateSite): UnknownRow[] {
  return [
    ...openGates(ground, site),
    ...unknownFacts(site, Object.keys(FACT_CHECKS) as (keyof SiteFacts)[]),
  ];
}

function unknownFacts(site: CandidateSite, facts: readonly (keyof SiteFacts)[]): UnknownRow[] {
  return facts
    .filter((fact) => !site.facts[fact].known && !saidByGate(site, fact))
    .map((fact) => ({ site: site.id, name: site.name, ...FACT_CHECKS[fact] }));
}

const GATE_OF: Partial<Record<keyof SiteFacts, string>> = {
  leadMgPerKg: 'contamination',
  rootProtectedShare: 'root-protection',
  slopePercent: 'slope',
};

/** An open gate asks for the fact already. */
function saidByGate({ gates }: CandidateSite, fact: keyof SiteFacts): boolean {
  return gates.some((gate) => gate.status !== 'pass' && gate.kind === GATE_OF[fact]);
}

const FACT_OF: Partial<Record<BenefitMeasure, keyof SiteFacts>> = {
  'walkers-per-day': 'walkersPerDay',
  'slope-mowing-removed': 'slopePercent',
};

/** Facts from which the plan's benefit, compost and build types are worked out. */
function factsThatCount({ campus }: Ground, site: CandidateSite): (keyof SiteFacts)[] {
  const measured = campus.benefit.criteria.flatMap(({ measure }) => FACT_OF[measure] ?? []);
  const edible = site.buildTypes.some((id) => buildType(campus, id).edible);
  return [
    ...new Set<keyof SiteFacts>([
      ...(edible ? (['leadMgPerKg'] as const) : []),
      'rootProtectedShare',
      ...measured,
    ]),
  ];
}
