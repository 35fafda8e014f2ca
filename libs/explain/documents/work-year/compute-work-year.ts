import {
  plantIndex,
  plantingLabel,
  prepareIndex,
  seasonIndex,
  seasonInstance,
  seasonLabel,
  seasonMonths,
  seasonStart,
  yearIndexOf,
  type SeasonInstance,
} from '#domain/calendar.js';
import { buildType, candidate, type Campus } from '#domain/campus.js';
import { preparedYears, type Placement } from '#domain/plan.js';
import type { GateKind } from '#domain/site.js';
import { compostNeeds } from '#estimating/plan-needs/compost-needs.js';
import { laborNeeds } from '#estimating/plan-needs/labor-needs.js';
import { compostPrice } from '#estimating/plan-needs/money-needs.js';
import type { SiteCharges } from '#estimating/site-charges/site-charges.js';
import { workDaysHeld } from '#estimating/season-supply/sources.js';
import { centiHours, centiToHours, type CentiHours } from '#units/centihours.js';
import { centiToYards } from '#units/centiyards.js';
import { cents, centsToDollars } from '#units/cents.js';
import { monthInWords } from '#units/dates-in-words.js';
import { fiscalYearLabel, type FiscalYear } from '#units/fiscal-year.js';
import { addMonths } from '#units/months.js';
import type { Ground } from '../../overview/ground.js';
import { nameOfPart, preparing } from '../../overview/site-words.js';
import { zoneName } from '../../overview/years/year-rows.js';
import { partsIn } from '../../overview/built-parts.js';
import { paidFrom } from '../paid-from.js';
import { takeoffOf } from '../dossier/takeoff.js';
import { deliveryWindows } from './deliveries.js';
import type { WorkCompost, WorkSeason, WorkSite, WorkYear } from './work-year.js';

/** Longest usual nursery lead: 8 to 16 weeks, common practice with no source. */
const NURSERY_MONTHS = 4;

/** The first year of work. Null: the plan prepares no site. */
export function workYear(ground: Ground): WorkYear | null {
  const { placements } = ground.plan.decisions;
  const [first] = [...placements].sort((a, b) => a.year - b.year);
  if (!first) return null;
  const { year } = first;
  const { calendar } = ground.campus;
  const sites = placements
    .filter((placement) => preparedYears(placement).includes(year))
    .map((placement) => workSite(ground, placement, year));
  const prepare = seasonInstance(calendar, prepareIndex(calendar, yearIndexOf(calendar, year)));
  const plant = seasonInstance(calendar, plantIndex(calendar, yearIndexOf(calendar, year)));
  const opens = seasonStart(calendar, prepare);
  return {
    year: fiscalYearLabel(year),
    prepared: preparing(calendar, year),
    planted: plantingLabel(calendar, year),
    orderPlantsBy: monthInWords(addMonths(seasonStart(calendar, plant), -NURSERY_MONTHS)),
    sites,
    deliveries: deliveryWindows(sites, {
      opens,
      closes: addMonths(opens, prepare.season.months.length),
    }),
    compost: compostOf(ground, prepare),
    paidFrom: paidFrom(ground, (entry) => entry.year === year),
    seasons: calendar.seasons.map((_, order) =>
      workSeason(
        ground,
        seasonInstance(calendar, seasonIndex(calendar, yearIndexOf(calendar, year), order)),
      ),
    ),
  };
}

const HOLDING: ReadonlySet<GateKind> = new Set(['access', 'structure', 'utilities', 'fire-lane']);

/** A site, or the half of it that is prepared in the year. */
function workSite(ground: Ground, placement: Placement, year: FiscalYear): WorkSite {
  const { campus } = ground;
  const site = candidate(campus, placement.site);
  const type = buildType(campus, placement.buildType);
  const parts = partsIn(ground, placement, year);
  const hours = (of: (charges: SiteCharges) => CentiHours) =>
    parts.reduce((sum, part) => sum + centiToHours(of(part.charges)), 0);
  const { truckAccess } = site.facts;
  return {
    site: site.id,
    name: nameOfPart(site.name, placement, year),
    zone: zoneName(ground, site.zone),
    buildType: type.name,
    areaSqFt: parts.reduce((sum, { share }) => sum + share * site.areaSqFt, 0),
    edible: type.edible,
    takeoff: takeoffOf(campus, { site, type }, parts),
    prepareHours: hours(({ prepareHours }) => prepareHours),
    plantHours: hours(({ plantHours }) => plantHours),
    truckAccess: truckAccess.known ? truckAccess.value : null,
    holds: site.gates
      .filter(({ kind, status }) => status !== 'pass' && HOLDING.has(kind))
      .map(({ note }) => note),
  };
}

function compostOf({ campus, plan, charges }: Ground, prepare: SeasonInstance): WorkCompost {
  const needs = compostNeeds(campus, plan.decisions, charges)[prepare.index];
  const purchases = plan.decisions.purchases.filter(({ season }) => season === prepare.index);
  const dollars = purchases.reduce(
    (sum, p) => sum + p.cubicYards * compostPrice(campus, prepare.yearIndex, p.grade),
    0,
  );
  return {
    needed: needs ? centiToYards(needs.builds) : 0,
    bought: yardsOf(purchases),
    boughtOther: yardsOf(purchases.filter(({ grade }) => grade === 'other')),
    boughtDollars: centsToDollars(cents(dollars)),
  };
}

function yardsOf(purchases: readonly { readonly cubicYards: number }[]): number {
  return purchases.reduce((sum, { cubicYards }) => sum + cubicYards, 0);
}

function workSeason({ campus, plan, charges }: Ground, instance: SeasonInstance): WorkSeason {
  const { calendar } = campus;
  const needs = laborNeeds(campus, plan.decisions, charges)[instance.index];
  const compost = compostNeeds(campus, plan.decisions, charges)[instance.index];
  const hours = (amount: number) => centiToHours(centiHours(amount));
  return {
    label: seasonLabel(calendar, instance),
    months: monthSpan(campus, instance),
    role: roleOf(campus, instance),
    careHours: needs ? hours(needs['care-food'] + needs['care-other']) : 0,
    harvestHours: needs ? hours(needs.harvest) : 0,
    topDress: compost ? centiToYards(compost.topDress) : 0,
    workDays: campus.workDays
      .filter(({ season }) => season === instance.season.id)
      .map((day) => ({
        name: day.name,
        count: workDaysHeld(plan.decisions, day.id, instance),
        people: day.peoplePresent,
        leaders: day.leaders,
      }))
      .filter(({ count }) => count > 0),
  };
}

function roleOf({ calendar }: Campus, { season }: SeasonInstance): WorkSeason['role'] {
  if (season.id === calendar.prepareSeason) return 'prepare';
  return season.id === calendar.plantSeason ? 'plant' : 'care';
}

/** `September to November 2027`, `December 2027 to February 2028`. */
function monthSpan({ calendar }: Campus, instance: SeasonInstance): string {
  const names = seasonMonths(calendar, instance).map(({ month, calendarYear }) =>
    monthInWords(`${calendarYear}-${String(month).padStart(2, '0')}-01`),
  );
  const [first = '', last = ''] = [names[0], names.at(-1)];
  const [month = '', year = ''] = first.split(' ');
  if (first === last) return first;
  return last.endsWith(year) ? `${month} to ${last}` : `${first} to ${last}`;
}
