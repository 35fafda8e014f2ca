import { plantingLabel } from '#domain/calendar.js';
import { buildType, candidate } from '#domain/campus.js';
import type { Placement } from '#domain/plan.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import type { Ground } from '../ground.js';
import { laterInWords } from '../later-words.js';
import type { NextSite, NextYear, SeasonRow } from '../plan-overview.js';
import { toSettleBefore } from '../unknowns/unknown-rows.js';
import { costBandOf } from '../years/cost-band.js';
import { zoneName } from '../years/year-rows.js';
import { comparisonReasons } from './comparison-reasons.js';
import { moneyReasons } from './money-reasons.js';
import { promiseReasons } from './promise-reasons.js';
import { rivalsIn } from './rivals.js';
import { roomReason } from './room-reason.js';
import { ruleReasons } from './rule-reasons.js';
import { sideOf } from './weighed.js';

/**
 * The sites of the first year with the facts for and against each, beside every other candidate that
 * could be prepared then. The year is not solved again with another site in their place.
 */
export function nextYear(ground: Ground, seasons: readonly SeasonRow[]): NextYear {
  const { campus, plan } = ground;
  const { firstYear } = campus.calendar;
  const placements = plan.decisions.placements.filter((p) => p.year === firstYear);
  const rivals = rivalsIn(ground, 0);
  const site = (p: Placement) => nextSite(ground, p, { rivals, seasons });
  return {
    year: fiscalYearLabel(firstYear),
    planting: plantingLabel(campus.calendar, firstYear),
    comparedWith: rivals.filter((r) => !placements.some((p) => p.site === r.site)).length,
    sites: placements
      .map(site)
      .sort((a, b) => b.weight - a.weight)
      .map(({ next }) => next),
  };
}

interface Beside {
  readonly rivals: readonly Placement[];
  readonly seasons: readonly SeasonRow[];
}

function nextSite(
  ground: Ground,
  placement: Placement,
  { rivals, seasons }: Beside,
): { readonly weight: number; readonly next: NextSite } {
  const { campus } = ground;
  const site = candidate(campus, placement.site);
  const openGates = toSettleBefore(ground, site);
  const later = laterInWords(campus, placement);
  const promises = promiseReasons(ground, placement);
  const weighed = [
    ...promises,
    ...moneyReasons(ground, placement),
    ...ruleReasons(ground, placement, openGates),
    ...roomReason(ground, placement, seasons),
    ...comparisonReasons(ground, placement, rivals),
  ];
  return {
    weight: Math.max(-1, ...promises.map(({ size }) => size)),
    next: {
      site: site.id,
      name: site.name,
      zone: zoneName(ground, site.zone),
      buildType: buildType(campus, placement.buildType).name,
      areaSqFt: site.areaSqFt,
      ...(later === '' ? {} : { later }),
      cost: costBandOf(ground, placement),
      reasons: sideOf(weighed, 'for'),
      against: sideOf(weighed, 'against'),
      openGates,
    },
  };
}
