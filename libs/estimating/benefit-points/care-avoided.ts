import type { BuildType } from '#domain/build-type.js';
import type { Campus } from '#domain/campus.js';
import { PROFILE_PARTS, settledCare, typeProfile } from '../site-charges/type-profile.js';

/** Area that the reference of care avoided stands for, in square feet. */
const REFERENCE_SQ_FT = 10_000;

/** Hours a year of settled care and harvest of a build type, per 1,000 sf. */
function settledHours(campus: Campus, type: BuildType): number {
  const seasons = campus.calendar.seasons.length;
  return settledCare(typeProfile(campus, type), seasons) / PROFILE_PARTS;
}

function heaviest(campus: Campus): number {
  return Math.max(0, ...campus.buildTypes.map((type) => settledHours(campus, type)));
}

/**
 * Hours a year that an area asks for less as a type than as the build type with most care; the campus
 * and not its candidates sets the scale.
 */
export function careAvoided(campus: Campus, type: BuildType, areaSqFt: number): number {
  return ((heaviest(campus) - settledHours(campus, type)) * areaSqFt) / 1000;
}

/** Hours a year of 10,000 sf of the build type with most care. */
export function careAvoidedReference(campus: Campus): number {
  return (heaviest(campus) * REFERENCE_SQ_FT) / 1000;
}
