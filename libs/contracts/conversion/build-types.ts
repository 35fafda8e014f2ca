import type { BuildType } from '#domain/build-type.js';
import { COMPONENTS, type CareCoefficients, type Component } from '#domain/component.js';
import { dollarsToCents } from '#units/cents.js';
import type { CampusFile } from '../campus-file.schema.js';

export function toBuildType(type: CampusFile['buildTypes'][number]): BuildType {
  const { componentShares, costDollarsPerSqFt, ...same } = type;
  return { ...same, shares: componentShares, costPerSqFt: dollarsToCents(costDollarsPerSqFt) };
}

export function toCare(care: CampusFile['care']): Record<Component, CareCoefficients> {
  const entries = COMPONENTS.map((component) => [component, toCoefficients(component, care)]);
  return Object.fromEntries(entries) as Record<Component, CareCoefficients>;
}

function toCoefficients(component: Component, care: CampusFile['care']): CareCoefficients {
  const given = care[component];
  return {
    component,
    firstYearHours: given.firstYearHoursPer1000SqFt,
    matureHours: given.matureHoursPer1000SqFt,
    decayPerYear: given.decayPerYear,
    seasonShares: given.seasonShares,
    harvestHours: given.harvestHoursPer1000SqFt,
    bearing: given.bearing,
    harvestSeasonShares: given.harvestSeasonShares,
    suppliesDollars: given.suppliesDollarsPer1000SqFt,
    topDressInches: given.topDressInches,
    provenance: given.provenance,
  };
}
