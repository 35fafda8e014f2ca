import type { BuildType } from '#domain/build-type.js';
import type { Campus } from '#domain/campus.js';
import { COMPONENTS, FOOD_COMPONENTS, type Component } from '#domain/component.js';
import type { CompostGrade } from '#domain/compost.js';
import { careHoursPer1000SqFt } from '../care-hours/decay.js';
import { SQUARE_FOOT_INCHES_PER_CUBIC_YARD } from '../takeoff/layers.js';

/**
 * From this age on, in years, care is taken as settled at the level of this age: what is left then of the
 * first years' extra care is less than anyone could measure. By judgement, no source.
 */
export const SETTLED_AGE = 20;

export const CARE_CLASSES = ['care-food', 'care-other', 'harvest'] as const;
export type CareClass = (typeof CARE_CLASSES)[number];

/** Parts of an hour, or of a cubic yard, in which a profile is whole, for each 1,000 square feet. */
export const PROFILE_PARTS = 10_000;

/**
 * A profile is whole ten-thousandths for each 1,000 sf and areas are whole square feet, so their
 * product is whole in these parts of an hour or cubic yard, and sums over sites are exact.
 */
export const FINE_PARTS = PROFILE_PARTS * 1000;

/** Fine parts in one hundredth. */
export const FINE_PER_HUNDREDTH = FINE_PARTS / 100;

/** What each 1,000 square feet of a build type ask for, by age. */
export interface TypeProfile {
  /** Ten-thousandths of an hour of a class in the season at `order`, at an age of 1 or more; 0 before. */
  care(taskClass: CareClass, age: number, order: number): number;
  /** Ten-thousandths of a cubic yard of compost spread each year on established ground. */
  readonly topDress: number;
  /**
   * Grade that its compost must have, at the build and later: certified on all ground of an edible
   * type, since a bed of herbs beside a path is dressed from the same heap. `other` takes either.
   */
  readonly compostGrade: CompostGrade;
}

/** Hundredths that serve an amount in fine parts, rounded up once for all sites together. */
export function hundredthsFor(fine: number): number {
  return Math.ceil(fine / FINE_PER_HUNDREDTH);
}

/** Ten-thousandths of an hour a year of settled care and harvest, for each 1,000 square feet. */
export function settledCare(profile: TypeProfile, seasons: number): number {
  let parts = 0;
  for (let order = 0; order < seasons; order++) {
    for (const c of CARE_CLASSES) parts += profile.care(c, SETTLED_AGE, order);
  }
  return parts;
}

const profiles = new WeakMap<Campus, Map<string, TypeProfile>>();

/** The profile of a type on a campus, worked out once. */
export function typeProfile(campus: Campus, type: BuildType): TypeProfile {
  const known = profiles.get(campus) ?? new Map<string, TypeProfile>();
  profiles.set(campus, known);
  const found = known.get(type.id);
  if (found) return found;
  const made = makeProfile(campus, type);
  known.set(type.id, made);
  return made;
}

function makeProfile(campus: Campus, type: BuildType): TypeProfile {
  const table = {
    'care-food': careTable(campus, type, FOOD),
    'care-other': careTable(campus, type, OTHER),
    harvest: harvestTable(campus, type),
  };
  const dressed = COMPONENTS.reduce(
    (sum, c) => sum + type.shares[c] * campus.care[c].topDressInches,
    0,
  );
  return {
    care: (taskClass, age, order) =>
      age < 1 ? 0 : (table[taskClass][Math.min(age, SETTLED_AGE) - 1]?.[order] ?? 0),
    topDress: whole((dressed * 1000) / SQUARE_FOOT_INCHES_PER_CUBIC_YARD),
    compostGrade: type.edible ? 'certified' : 'other',
  };
}

const FOOD = COMPONENTS.filter((c) => FOOD_COMPONENTS.has(c));
const OTHER = COMPONENTS.filter((c) => !FOOD_COMPONENTS.has(c));

function whole(amount: number): number {
  return Math.round(amount * PROFILE_PARTS);
}

type Table = readonly (readonly number[])[];

/** By age from 1 to settled, and season order. */
function tableOf(campus: Campus, hours: (age: number, season: string) => number): Table {
  return Array.from({ length: SETTLED_AGE }, (_, i) =>
    campus.calendar.seasons.map((season) => whole(hours(i + 1, season.id))),
  );
}

function careTable(campus: Campus, type: BuildType, components: readonly Component[]): Table {
  return tableOf(campus, (age, season) =>
    components.reduce((sum, c) => {
      const care = campus.care[c];
      return (
        sum + type.shares[c] * careHoursPer1000SqFt(care, age) * (care.seasonShares[season] ?? 0)
      );
    }, 0),
  );
}

function harvestTable(campus: Campus, type: BuildType): Table {
  return tableOf(campus, (age, season) =>
    COMPONENTS.reduce((sum, c) => {
      const care = campus.care[c];
      const ramp = care.bearing[Math.min(age, care.bearing.length) - 1] ?? 0;
      const share = care.harvestSeasonShares[season] ?? 0;
      return sum + type.shares[c] * care.harvestHours * ramp * share;
    }, 0),
  );
}
