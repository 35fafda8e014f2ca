import type { Zone } from '#domain/campus.js';
import type { CandidateSite, Evidence, ExistingSite, Gate, SiteFacts } from '#domain/site.js';
import type { CampusFile } from '../campus-file.schema.js';
import { toSurvey, toTree } from './survey.js';
import { optional, toKnown, toOptionalYear as year } from './values.js';

type CandidatePart = CampusFile['candidateSites'][number];
type ExistingPart = CampusFile['existingSites'][number];
type SitePart = Omit<ExistingPart, 'buildType' | 'plantedCalendarYear'>;

export function toZone(zone: CampusFile['zones'][number]): Zone {
  return {
    id: zone.id,
    name: zone.name,
    ...optional('boundary', zone.boundary?.coordinates),
  };
}

/** The area is the stated one; where planning uses the drawn one instead, the loader puts it in. */
export function toCandidate(site: CandidatePart): CandidateSite {
  return {
    stage: 'candidate',
    ...toSiteBase(site),
    buildTypes: site.buildTypes,
    ...optional('earliest', year(site.earliest)),
    ...optional('latest', year(site.latest)),
    costFactor: site.costFactor,
    ...optional('phasing', site.phasing),
    ...optional('laterChanges', site.laterChanges),
    ...optional('temporary', site.temporary),
    notes: site.notes,
  };
}

export function toExisting(site: ExistingPart): ExistingSite {
  return {
    stage: 'existing',
    ...toSiteBase(site),
    buildType: site.buildType,
    plantedYear: site.plantedCalendarYear,
  };
}

function toSiteBase(site: SitePart) {
  return {
    id: site.id,
    name: site.name,
    zone: site.zone,
    boundary: site.boundary.coordinates,
    areaSqFt: site.areaSqFt,
    facts: toFacts(site.facts),
    gates: site.gates.map(toGate),
    evidence: site.evidence.map(toEvidence),
    ...optional('trees', site.trees?.map(toTree)),
    ...optional('survey', site.survey && toSurvey(site.survey)),
    ...optional('rainTank', site.rainTank),
    ...optional('overrides', site.overrides),
  };
}

function toFacts(facts: SitePart['facts']): SiteFacts {
  return {
    cover: toKnown(facts.cover),
    soil: toKnown(facts.soil),
    ph: toKnown(facts.ph),
    organicMatterPercent: toKnown(facts.organicMatterPercent),
    leadMgPerKg: toKnown(facts.leadMgPerKg),
    slopePercent: toKnown(facts.slopePercent),
    sunHours: toKnown(facts.sunHours),
    walkersPerDay: toKnown(facts.walkersPerDay),
    waterFeet: toKnown(facts.waterFeet),
    kitchenFeet: toKnown(facts.kitchenFeet),
    truckAccess: toKnown(facts.truckAccess),
    rootProtectedShare: toKnown(facts.rootProtectedShare),
  };
}

function toGate({ plannedClearFrom, ...gate }: SitePart['gates'][number]): Gate {
  return { ...gate, ...optional('plannedClearFrom', year(plannedClearFrom)) };
}

function toEvidence({ expires, ...evidence }: SitePart['evidence'][number]): Evidence {
  return { ...evidence, ...optional('expires', expires) };
}
