import { plantingLabel } from '#domain/calendar.js';
import { buildType, candidate, type Campus } from '#domain/campus.js';
import type { Placement } from '#domain/plan.js';
import { estimateSite } from '#estimating/site/site-estimate.js';
import { centiToHours } from '#units/centihours.js';
import { cents, centsToDollars } from '#units/cents.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import { cautionsFor } from '../../overview/cautions.js';
import type { Ground } from '../../overview/ground.js';
import { careHoursAt } from '../../overview/labor/busy-season.js';
import { preparing } from '../../overview/site-words.js';
import { toSettleBefore } from '../../overview/unknowns/unknown-rows.js';
import { costBandOf } from '../../overview/years/cost-band.js';
import { zoneName } from '../../overview/years/year-rows.js';
import { bearingsOf } from './bearings.js';
import { factRows } from './facts.js';
import type { SiteDossier, SiteHours, SiteMoney } from './site-dossier.js';
import { sketchOf } from './sketch.js';
import { componentRows, takeoffOf, valueOf, type BuiltSite } from './takeoff.js';

/** The dossier of one candidate. Throws for a site that the campus does not have. */
export function siteDossier(ground: Ground, id: string): SiteDossier {
  const { campus, placed } = ground;
  const site = candidate(campus, id);
  const placement = placed.get(id) ?? outsidePlan(campus, id);
  const type = buildType(campus, placement.buildType);
  const yearsFromPriceYear = placement.year - campus.calendar.priceYear;
  const estimate = estimateSite({ campus, site, buildTypeId: type.id, yearsFromPriceYear });
  const built: BuiltSite = { site, type, estimate };
  return {
    site: id,
    name: site.name,
    zone: zoneName(ground, site.zone),
    areaSqFt: site.areaSqFt,
    buildType: type.name,
    otherTypes: site.buildTypes
      .filter((other) => other !== type.id)
      .map((other) => buildType(campus, other).name),
    planned: placed.has(id) ? plannedIn(campus, placement) : null,
    cost: costBandOf(ground, placement),
    sketch: sketchOf(campus, site),
    components: componentRows(built),
    takeoff: takeoffOf(ground, built),
    hours: hoursOf(ground, placement, built),
    money: moneyOf(ground, placement, built),
    facts: factRows(site.facts),
    gates: site.gates,
    openQuestions: toSettleBefore(ground, site),
    evidence: site.evidence.map((one) => ({
      ...one,
      expired: one.expires !== undefined && one.expires < campus.dataDate,
    })),
    bearings: bearingsOf(campus, site),
    cautions: cautionsFor(ground, [placement]),
  };
}

/** A site that the plan leaves out is told as if it were prepared in the first year. */
function outsidePlan(campus: Campus, id: string): Placement {
  const [first] = candidate(campus, id).buildTypes;
  if (first === undefined) throw new RangeError(`${id} may become nothing`);
  return { site: id, buildType: first, year: campus.calendar.firstYear };
}

function plannedIn({ calendar }: Campus, { year }: Placement): SiteDossier['planned'] {
  return {
    year: fiscalYearLabel(year),
    prepared: preparing(calendar, year),
    planted: plantingLabel(calendar, year),
  };
}

/** Ages, in years from planting, at which care is told. */
const AGES = [1, 2, 3, 5, 10] as const;

function hoursOf({ campus, charges }: Ground, placement: Placement, built: BuiltSite): SiteHours {
  const { prepareHours, plantHours } = charges.of(placement.site, placement.buildType);
  const { seasons } = campus.calendar;
  const mowing = built.estimate.sections.benefits.find(({ name }) => name === 'mowing avoided');
  return {
    prepare: centiToHours(prepareHours),
    plant: centiToHours(plantHours),
    seasons: seasons.map(({ id }) => id),
    care: AGES.map((age) => ({
      age,
      bySeason: seasons.map((_, order) => careHoursAt(charges, placement, { age, order })),
    })),
    mowingEnds: mowing?.value ?? null,
  };
}

function moneyOf(
  { campus, plan }: Ground,
  { site }: Placement,
  { estimate }: BuiltSite,
): SiteMoney {
  const build = plan.spending.filter((entry) => entry.line === 'build' && entry.site === site);
  const paidFrom = campus.funds.flatMap(({ id, name }) => {
    const spent = build
      .filter(({ fund }) => fund === id)
      .reduce((sum, { amount }) => sum + amount, 0);
    return spent === 0 ? [] : [{ fund: name, dollars: centsToDollars(cents(spent)) }];
  });
  const { money } = estimate.sections;
  return {
    paidFrom,
    tenYearsConstant: valueOf(money, 'constant'),
    tenYearsNominal: valueOf(money, 'nominal'),
    constantDollarsOf: fiscalYearLabel(campus.calendar.priceYear),
  };
}
