import { yearIndexOf } from '#domain/calendar.js';
import type { FiscalYear } from '#units/fiscal-year.js';
import type { Ground } from '../ground.js';

/**
 * Candidates large enough to count that could be prepared in a year, given what the plan has built
 * before: not built yet, open in that year, no rival of an exclusive group built, and with all that
 * must come first.
 */
export function sitesLeftIn(ground: Ground, year: FiscalYear, countsFromSqFt: number): number {
  const { campus, lifecycles } = ground;
  const yearIndex = yearIndexOf(campus.calendar, year);
  const open = new Set(lifecycles.filter((l) => l.yearIndex === yearIndex).map((l) => l.site));
  return campus.candidates.filter(
    ({ id, areaSqFt }) =>
      open.has(id) &&
      areaSqFt >= countsFromSqFt &&
      !builtBefore(ground, id, year) &&
      !rivalBuilt(ground, id, year) &&
      comesAfterWhatItNeeds(ground, id, year),
  ).length;
}

function builtBefore({ placed }: Ground, site: string, year: number): boolean {
  return (placed.get(site)?.year ?? Infinity) < year;
}

function rivalBuilt(ground: Ground, site: string, year: FiscalYear): boolean {
  return ground.campus.exclusiveGroups.some(
    (group) =>
      group.sites.includes(site) &&
      group.sites.some((rival) => rival !== site && builtBefore(ground, rival, year)),
  );
}

function comesAfterWhatItNeeds(ground: Ground, site: string, year: FiscalYear): boolean {
  const { campus } = ground;
  const standing = new Set(campus.existing.map(({ id }) => id));
  return campus.precedence
    .filter(({ after }) => after === site)
    .every(
      ({ before, yearsApart }) =>
        standing.has(before) || builtBefore(ground, before, year - yearsApart + 1),
    );
}
