import type { Breach } from '#domain/breach.js';
import { lastBuildYear } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import { preparedYears, type Placement } from '#domain/plan.js';
import type { CandidateSite } from '#domain/site.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import type { Check } from '../check.js';
import { gateBreaches } from './gates.js';

/** A site, and each half of one, is built in its years, as a type it allows, with every gate passed or planned as passed. */
export const checkEligibleYears: Check = (campus, plan) =>
  plan.decisions.placements.flatMap((placement) => {
    const site = campus.candidates.find((s) => s.id === placement.site);
    const type = campus.buildTypes.find((t) => t.id === placement.buildType);
    if (!site)
      return [breach(placement, `${placement.site} is not a candidate site of this campus`)];
    if (!type)
      return [breach(placement, `${placement.buildType} is not a build type of this campus`)];
    return [
      ...typeBreaches(site, placement),
      ...preparedYears(placement).flatMap((year) => [
        ...windowBreaches(campus, site, { ...placement, year }),
        ...gateBreaches(site, type, year),
      ]),
    ];
  });

function breach(placement: Placement, message: string): Breach {
  return { rule: 'eligible-years', record: placement.site, message };
}

function windowBreaches(campus: Campus, site: CandidateSite, placement: Placement): Breach[] {
  const first = site.earliest ?? campus.calendar.firstYear;
  const last = site.latest ?? lastBuildYear(campus.calendar);
  const { year } = placement;
  const { firstYear } = campus.calendar;
  const outside =
    year < first || year > last || year < firstYear || year > lastBuildYear(campus.calendar);
  if (!outside) return [];
  const when = `${fiscalYearLabel(first)} to ${fiscalYearLabel(last)}`;
  return [
    breach(
      placement,
      `${site.id} is prepared in ${fiscalYearLabel(year)}, outside its years ${when}`,
    ),
  ];
}

function typeBreaches(site: CandidateSite, placement: Placement): Breach[] {
  return site.buildTypes.includes(placement.buildType)
    ? []
    : [breach(placement, `${site.id} does not allow the build type ${placement.buildType}`)];
}
