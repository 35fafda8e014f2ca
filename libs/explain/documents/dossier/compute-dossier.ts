import { plantingLabel } from '#domain/calendar.js';
import { buildType, candidate, type Campus } from '#domain/campus.js';
import { preparedYears, type Placement } from '#domain/plan.js';
import type { CandidateSite } from '#domain/site.js';
import { careTail, tailTotals, type TailYear } from '#estimating/cost/care-tail.js';
import { coefficient } from '#estimating/defaults/coefficients.js';
import { overridesAt } from '#estimating/defaults/overrides-at.js';
import type { SiteCharges } from '#estimating/site-charges/site-charges.js';
import { mowingNode } from '#estimating/site/benefit-nodes.js';
import { centiToHours, type CentiHours } from '#units/centihours.js';
import { centsToDollars, sumCents } from '#units/cents.js';
import { fiscalYearLabel, type FiscalYear } from '#units/fiscal-year.js';
import { reviewCautions } from '../../overview/cautions.js';
import type { Ground } from '../../overview/ground.js';
import { changeInWords } from '../../overview/later-words.js';
import { careHoursAt } from '../../overview/labor/busy-season.js';
import { preparing } from '../../overview/site-words.js';
import { toSettleBefore } from '../../overview/unknowns/unknown-rows.js';
import { costBandOf } from '../../overview/years/cost-band.js';
import { zoneName } from '../../overview/years/year-rows.js';
import { paidFrom } from '../paid-from.js';
import { builtParts, partHours, yearsLaterOf } from '../../overview/built-parts.js';
import { bearingsOf } from './bearings.js';
import { factRows } from './facts.js';
import type { SiteDossier, SiteHours, SiteMoney } from './site-dossier.js';
import { sketchOf } from './sketch.js';
import { componentRows, takeoffOf, type BuiltSite } from './takeoff.js';

/** The dossier of one candidate. Throws for a site that the campus does not have. */
export function siteDossier(ground: Ground, id: string): SiteDossier {
  const { campus, placed } = ground;
  const site = candidate(campus, id);
  const placement = placed.get(id) ?? outsidePlan(campus, id);
  const type = buildType(campus, placement.buildType);
  const built: BuiltSite = { site, type };
  const parts = builtParts(ground, placement);
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
    takeoff: takeoffOf(campus, built, parts),
    hours: hoursOf(ground, placement, site),
    money: moneyOf(ground, placement, site),
    facts: factRows(site.facts),
    gates: site.gates,
    openQuestions: toSettleBefore(ground, site),
    evidence: site.evidence.map((one) => ({
      ...one,
      expired: one.expires !== undefined && one.expires < campus.dataDate,
    })),
    bearings: bearingsOf(campus, site),
    cautions: reviewCautions(ground, placement),
  };
}

/** A site that the plan leaves out is told as if it were prepared in the first year. */
function outsidePlan(campus: Campus, id: string): Placement {
  const [first] = candidate(campus, id).buildTypes;
  if (first === undefined) throw new RangeError(`${id} may become nothing`);
  return { site: id, buildType: first, year: campus.calendar.firstYear };
}

function plannedIn(campus: Campus, placement: Placement): SiteDossier['planned'] {
  const { calendar } = campus;
  const inWords = (of: (year: FiscalYear) => string) =>
    preparedYears(placement).map(of).join(', its second half ');
  return {
    ...(placement.change ? { change: changeInWords(campus, placement.change) } : {}),
    year: fiscalYearLabel(placement.year),
    prepared: inWords((year) => preparing(calendar, year)),
    planted: inWords((year) => plantingLabel(calendar, year)),
  };
}

/** Ages, in years from planting, at which care is told. */
const AGES = [1, 2, 3, 5, 10] as const;

function hoursOf(ground: Ground, placement: Placement, site: CandidateSite): SiteHours {
  const { campus } = ground;
  const parts = builtParts(ground, placement);
  const hours = (of: (charges: SiteCharges) => CentiHours) =>
    parts.reduce((sum, part) => sum + centiToHours(of(part.charges)), 0);
  const mowing = mowingNode(site.areaSqFt, site.facts.cover, overridesAt(campus, site));
  return {
    prepare: hours(({ prepareHours }) => prepareHours),
    plant: hours(({ plantHours }) => plantHours),
    seasons: campus.calendar.seasons.map(({ id }) => id),
    care: AGES.map((age) => ({ age, bySeason: careBySeason(ground, placement, age) })),
    mowingEnds: mowing.value,
  };
}

function careBySeason({ campus, charges }: Ground, placement: Placement, age: number): number[] {
  return campus.calendar.seasons.map((_, order) => careHoursAt(charges, placement, { age, order }));
}

/** Years of care whose cost is told. */
const TAIL_YEARS = 10;

function moneyOf(ground: Ground, placement: Placement, site: CandidateSite): SiteMoney {
  const { priceYear } = ground.campus.calendar;
  const { constantDollars, nominalDollars } = tailTotals(careYears(ground, placement, site));
  return {
    paidFrom: paidFrom(ground, (entry) => entry.site === site.id),
    tenYearsConstant: constantDollars,
    tenYearsNominal: nominalDollars,
    constantDollarsOf: fiscalYearLabel(priceYear),
  };
}

/** The first years of care, counted from the first planting: of a second half, as many fewer. */
function careYears(ground: Ground, placement: Placement, site: CandidateSite): TailYear[] {
  const { campus } = ground;
  const parts = builtParts(ground, placement);
  return parts.flatMap((part) => {
    const later = yearsLaterOf(ground, parts, part);
    return careTail({
      hoursAtAge: Array.from({ length: Math.max(0, TAIL_YEARS - later) }, (_, index) =>
        partHours(ground, part, index + 1),
      ),
      dollarsPerHour: coefficient('cost.care-hour', overridesAt(campus, site)),
      suppliesPerYear: centsToDollars(sumCents(part.charges.supplies)),
      yearsUntilFirst: placement.year + later - campus.calendar.priceYear,
      growth: campus.escalation.wages,
    });
  });
}
