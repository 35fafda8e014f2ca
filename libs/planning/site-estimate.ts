import { nearestOf } from '#contracts/reading/nearest.js';
import { buildType, type Campus } from '#domain/campus.js';
import { anError, type Problem } from '#domain/problem.js';
import type { Site } from '#domain/site.js';
import type { ExplainedNode } from '#estimating/explained.js';
import type { Finding } from '#estimating/finding.js';
import { gateReview, type GateRow } from '#estimating/gates/gate-review.js';
import { estimateSite, type SiteEstimate } from '#estimating/site/site-estimate.js';
import { campusSuitability } from '#estimating/suitability/campus-suitability.js';
import { suitabilityNodes } from '#estimating/suitability/suitability-nodes.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import type { UnitSystem } from '#units/measure.js';
import { nodeIn } from './estimate-node.js';

export interface EstimateWish {
  readonly site: string;
  /** Left out: every build type that the site may become. */
  readonly type?: string | undefined;
  readonly units: UnitSystem;
}

/** A site as one build type. Sections stand side by side; they have no total. */
export interface TypeEstimate {
  readonly buildType: string;
  readonly name: string;
  readonly findings: readonly Finding[];
  readonly sections: Readonly<Record<keyof SiteEstimate['sections'], readonly ExplainedNode[]>>;
}

export interface SiteEstimates {
  readonly site: string;
  readonly name: string;
  readonly units: UnitSystem;
  /** Fiscal year of the prices, such as `FY28`. */
  readonly pricesOf: string;
  /** What a reader has to know beside the numbers. */
  readonly notes: readonly string[];
  readonly gates: readonly GateRow[];
  /** How a candidate is suited, before gates and plan; empty for a site that was planted. */
  readonly suitability: readonly ExplainedNode[];
  readonly estimates: readonly TypeEstimate[];
}

export type EstimateAnswer =
  | { readonly kind: 'estimated'; readonly estimates: SiteEstimates }
  | { readonly kind: 'unknown-site' | 'unknown-type'; readonly problem: Problem };

/**
 * The whole build-up of a site, as each build type that it may become or as the one named, in
 * prices of the campus's price year. A site that was planted has its own type only.
 */
export function siteEstimates(campus: Campus, wish: EstimateWish): EstimateAnswer {
  const sites: readonly Site[] = [...campus.candidates, ...campus.existing];
  const site = sites.find(({ id }) => id === wish.site);
  if (!site) return unknownSite(wish.site, sites);
  const allowed = site.stage === 'candidate' ? site.buildTypes : [site.buildType];
  if (wish.type !== undefined && !allowed.includes(wish.type)) {
    return unknownType(site, wish.type, allowed);
  }
  const types = wish.type === undefined ? allowed : [wish.type];
  return {
    kind: 'estimated',
    estimates: {
      site: site.id,
      name: site.name,
      units: wish.units,
      pricesOf: fiscalYearLabel(campus.calendar.priceYear),
      notes: notesFor(campus, wish.units),
      gates: gateReview(campus, site),
      suitability: suitabilityOf(campus, site).map((node) => nodeIn(wish.units, node)),
      estimates: types.map((id) => typeEstimate({ campus, site, id }, wish.units)),
    },
  };
}

function typeEstimate(
  of: { readonly campus: Campus; readonly site: Site; readonly id: string },
  units: UnitSystem,
): TypeEstimate {
  const { campus, site, id } = of;
  const { findings, sections } = estimateSite({
    campus,
    site,
    buildTypeId: id,
    yearsFromPriceYear: 0,
  });
  const told = (nodes: readonly ExplainedNode[]) => nodes.map((node) => nodeIn(units, node));
  const { takeoff, hours, money, water, benefits } = sections;
  return {
    buildType: id,
    name: buildType(campus, id).name,
    findings,
    sections: {
      takeoff: told(takeoff),
      hours: told(hours),
      money: told(money),
      water: told(water),
      benefits: told(benefits),
    },
  };
}

function notesFor({ calendar }: Campus, units: UnitSystem): string[] {
  const prices = fiscalYearLabel(calendar.priceYear);
  return [
    `Prices are those of ${prices}; money in dollars of each year grows from there.`,
    'Planning figures, not a design, a bid or a permit: local codes and licensed practice decide.',
    ...(units === 'metric'
      ? [
          'Told in metric. The formulas are worked in feet, inches, cubic yards, pounds and gallons, and speak of those.',
        ]
      : []),
  ];
}

function suitabilityOf(campus: Campus, { id }: Site): ExplainedNode[] {
  const own = campusSuitability(campus).find(({ site }) => site.id === id);
  return own ? suitabilityNodes(campus, own) : [];
}

const NEAREST_SHOWN = 3;

function unknownSite(id: string, sites: readonly Site[]): EstimateAnswer {
  const ids = sites.map((site) => site.id);
  const problem = anError({ code: 'SITE-UNKNOWN', record: `site ${id}`, field: 'id', value: id }, [
    `The campus has no site ${id}.`,
    `Give one of its sites; the nearest are ${nearestOf(id, ids, NEAREST_SHOWN).join(', ')}.`,
  ]);
  return { kind: 'unknown-site', problem };
}

function unknownType(site: Site, type: string, allowed: readonly string[]): EstimateAnswer {
  const place = { record: `site ${site.id}`, field: 'buildTypes', value: type };
  const problem = anError({ code: 'SITE-TYPE-NOT-ALLOWED', ...place }, [
    `${site.id} may not become ${type}.`,
    `Give one that it may become: ${allowed.join(', ')}.`,
  ]);
  return { kind: 'unknown-type', problem };
}
