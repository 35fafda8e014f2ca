import type { Breach } from '#domain/breach.js';
import type { BuildType } from '#domain/build-type.js';
import { lastBuildYear } from '#domain/calendar.js';
import type { Campus } from '#domain/campus.js';
import type { Placement } from '#domain/plan.js';
import type { CandidateSite, Gate } from '#domain/site.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import type { Check } from '../check.js';

/** A site is built in its years, as a type it allows, with every gate passed or planned as passed. */
export const checkEligibleYears: Check = (campus, plan) =>
  plan.decisions.placements.flatMap((placement) => {
    const site = campus.candidates.find((s) => s.id === placement.site);
    const type = campus.buildTypes.find((t) => t.id === placement.buildType);
    if (!site)
      return [breach(placement, `${placement.site} is not a candidate site of this campus`)];
    if (!type)
      return [breach(placement, `${placement.buildType} is not a build type of this campus`)];
    return [
      ...windowBreaches(campus, site, placement),
      ...typeBreaches(site, placement),
      ...gateBreaches(site, type, placement),
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

function gateBreaches(site: CandidateSite, type: BuildType, placement: Placement): Breach[] {
  return site.gates
    .filter((gate) => barsType(gate, type) && !passedBy(gate, placement))
    .map((gate) =>
      breach(
        placement,
        `${site.id}: the ${gate.kind} gate is ${gate.status} (${gate.note}), which bars ${type.name}`,
      ),
    );
}

function barsType(gate: Gate, type: BuildType): boolean {
  if (gate.bars === 'all') return true;
  if (gate.bars === 'edible') return type.edible;
  return gate.bars.includes(type.id);
}

function passedBy(gate: Gate, placement: Placement): boolean {
  if (gate.status === 'pass') return true;
  const planned = gate.status === 'unknown' ? gate.plannedClearFrom : undefined;
  return planned !== undefined && placement.year >= planned;
}
