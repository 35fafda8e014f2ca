import { buildType, type Campus } from '#domain/campus.js';
import { COMPONENTS, type Component } from '#domain/component.js';
import type { Site } from '#domain/site.js';
import type { Overrides } from '../defaults/coefficients.js';
import { overridesAt } from '../defaults/overrides-at.js';
import { inputFindings } from '../defaults/input-findings.js';
import { explained, type ExplainedNode, given, sumOf } from '../explained.js';
import type { Finding } from '../finding.js';
import { componentAreas, componentShareFindings } from '../takeoff/component-areas.js';
import { layerCuYd } from '../takeoff/layers.js';
import { foodNodes, mowingNode, runoffNode } from './benefit-nodes.js';
import { careByAge, harvestNode } from './care-nodes.js';
import { capitalNodes, careTailNodes } from './cost-nodes.js';
import { waterNodes } from './water-nodes.js';
import { deliveryNodes, layerNode } from './takeoff-nodes.js';

/** Years over which the care of a site is shown. */
export const TAIL_YEARS_SHOWN = 10;

/** Storm for which runoff is shown, inches: about a two-year day in the upper Midwest. */
export const SHOWN_STORM_INCHES = 2.4;

export interface SiteEstimateInput {
  readonly campus: Campus;
  readonly site: Site;
  readonly buildTypeId: string;
  /** Years from the campus's price year to the year of the build. */
  readonly yearsFromPriceYear: number;
}

/** The same with the values measured at the site and on its campus. */
interface Estimated extends SiteEstimateInput {
  readonly overrides: Overrides;
}

/** All that a site would take and bring as one build type. Sections stand side by side; they have no total. */
export interface SiteEstimate {
  readonly site: string;
  readonly buildType: string;
  readonly findings: readonly Finding[];
  readonly sections: Readonly<
    Record<'takeoff' | 'hours' | 'money' | 'water' | 'benefits', readonly ExplainedNode[]>
  >;
}

/** A site's whole build-up, every number open to its inputs, formula and source. */
export function estimateSite(of: SiteEstimateInput): SiteEstimate {
  const { campus, site } = of;
  const input: Estimated = { ...of, overrides: overridesAt(campus, site) };
  const type = buildType(campus, input.buildTypeId);
  const areas = componentAreas(site.areaSqFt, type.shares);
  const care = careByAge({ areas, care: campus.care }, TAIL_YEARS_SHOWN);
  const harvest = care.map((_, index) => harvestNode({ areas, care: campus.care }, index + 1));
  const isHarvested = harvest.some(({ inputs }) => inputs.length > 0);
  return {
    site: site.id,
    buildType: type.id,
    findings: [
      ...inputFindings({ areaSqFt: site.areaSqFt }),
      ...componentShareFindings(type.shares),
    ],
    sections: {
      takeoff: takeoffSection(input, areas),
      hours: [...installSection(input), ...care, ...(isHarvested ? harvest : [])],
      money: moneySection(input, areas, { care, harvest }),
      water: waterNodes({ campus, site, areas, overrides: input.overrides }),
      benefits: benefitSection(input, areas),
    },
  };
}

type Areas = Readonly<Record<Component, number>>;

function takeoffSection(
  { campus, site, buildTypeId, overrides }: Estimated,
  areas: Areas,
): ExplainedNode[] {
  const type = buildType(campus, buildTypeId);
  const waste = given('waste', { value: campus.materialWaste, unit: 'share' }, 'campus record');
  const rootShare = rootShareNode(site);
  const shared = { areas, waste, rootShare, overrides };
  const compost = layerNode({ material: 'compost', inches: type.compostInches, ...shared });
  const chips = layerNode({ material: 'wood chips', inches: type.chipInches, ...shared });
  const compostDelivery = deliveryNodes('compost', compost, overrides);
  const chipDelivery = deliveryNodes('wood chips', chips, overrides);
  return [
    sumOf('truck loads', 'loads', [compostDelivery.loads, chipDelivery.loads]),
    sumOf('weight of layers', 'lb', [compostDelivery.pounds, chipDelivery.pounds]),
    compost,
    chips,
    topDressNode(campus, areas),
  ];
}

function rootShareNode({ facts: { rootProtectedShare: share } }: Site): ExplainedNode {
  const source = share.known ? 'measured' : 'unknown: full depth is counted, the gate stays open';
  const value = share.known ? share.value : null;
  return given('share in root protection', { value, unit: 'share' }, source);
}

function topDressNode(campus: Campus, areas: Areas): ExplainedNode {
  const parts = COMPONENTS.filter((c) => areas[c] > 0 && campus.care[c].topDressInches > 0).map(
    (c) =>
      explained({
        name: `top-dress of ${c}`,
        value: layerCuYd({
          areaSqFt: areas[c],
          depthInches: campus.care[c].topDressInches,
          waste: 0,
        }),
        unit: 'cu yd/yr',
        formula: 'area x depth / 324',
        inputs: [
          given('area', { value: areas[c], unit: 'sf' }, 'site x share'),
          given(
            'depth',
            { value: campus.care[c].topDressInches, unit: 'in/yr' },
            'care coefficients',
          ),
        ],
      }),
  );
  return sumOf('top-dress', 'cu yd/yr', parts);
}

function installSection({ campus, site, buildTypeId }: SiteEstimateInput): ExplainedNode[] {
  const type = buildType(campus, buildTypeId);
  const area = given('area', { value: site.areaSqFt, unit: 'sf' }, 'boundary');
  const source = `${type.provenance.basis}: ${type.provenance.source}`;
  const node = (name: string, rate: number): ExplainedNode =>
    explained({
      name,
      value: (site.areaSqFt / 1000) * rate,
      unit: 'h',
      formula: 'area / 1,000 x hours per 1,000 sf',
      inputs: [area, given('rate', { value: rate, unit: 'h/1,000 sf' }, source)],
    });
  return [node('prepare', type.prepareHoursPer1000SqFt), node('plant', type.plantHoursPer1000SqFt)];
}

function moneySection(
  input: Estimated,
  areas: Areas,
  hours: { readonly care: readonly ExplainedNode[]; readonly harvest: readonly ExplainedNode[] },
): ExplainedNode[] {
  const { campus, site, yearsFromPriceYear, overrides } = input;
  const capital = capitalNodes({
    areaSqFt: site.areaSqFt,
    type: buildType(campus, input.buildTypeId),
    costFactor: site.stage === 'candidate' ? site.costFactor : 1,
    growth: campus.escalation.construction,
    priceYear: campus.calendar.priceYear,
    yearsFromPriceYear,
    overrides,
  });
  const supplies = COMPONENTS.reduce(
    (sum, c) => sum + (areas[c] / 1000) * campus.care[c].suppliesDollars,
    0,
  );
  const tail = careTailNodes({
    hours: hours.care.map((care, index) =>
      sumOf(`hours in year ${index + 1}`, 'h/yr', [care, ...hours.harvest.slice(index, index + 1)]),
    ),
    suppliesPerYear: supplies,
    growth: campus.escalation.wages,
    priceYear: campus.calendar.priceYear,
    yearsUntilFirst: yearsFromPriceYear,
    overrides,
  });
  return [capital.low, capital.likely, capital.high, tail.constant, tail.nominal];
}

function benefitSection(input: Estimated, areas: Areas): ExplainedNode[] {
  const { campus, site, buildTypeId, overrides } = input;
  const { areaSqFt, facts } = site;
  const { shares } = buildType(campus, buildTypeId);
  return [
    ...foodNodes({ areas, care: campus.care, overrides }, TAIL_YEARS_SHOWN),
    runoffNode({ areaSqFt, shares, facts, rainInches: SHOWN_STORM_INCHES }),
    mowingNode(areaSqFt, facts.cover, overrides),
  ];
}
