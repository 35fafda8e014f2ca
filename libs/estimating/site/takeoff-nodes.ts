import { COMPONENTS, type Component } from '#domain/component.js';
import { coefficientNode, type Overrides } from '../defaults/coefficients.js';
import { explained, type ExplainedNode, given } from '../explained.js';
import { layerCuYd, poundsOf } from '../takeoff/layers.js';
import { loadsOf } from '../takeoff/loads.js';
import { meanInches } from '../takeoff/root-exclusion.js';

export interface LayerDesign {
  readonly material: 'compost' | 'wood chips';
  readonly inches: Readonly<Record<Component, number>>;
  readonly areas: Readonly<Record<Component, number>>;
  readonly waste: ExplainedNode;
  /** Unknown counts as none here; its gate stays open. */
  readonly rootShare: ExplainedNode;
  readonly overrides: Overrides;
}

/** Cubic yards of one material, by component. */
export function layerNode(design: LayerDesign): ExplainedNode {
  const { material, areas, inches } = design;
  const limit = coefficientNode(LIMITS[material], design.overrides);
  const parts = COMPONENTS.filter((c) => areas[c] > 0 && inches[c] > 0).map((component) => {
    const area = given(
      `${component} area`,
      { value: areas[component], unit: 'sf' },
      'site x share',
    );
    const depth = given('loose depth', { value: inches[component], unit: 'in' }, 'build type');
    const depthInches = meanInches({
      areaSqFt: areas[component],
      designInches: inches[component],
      protectedShare: design.rootShare.value ?? 0,
      mostInches: limit.value ?? 0,
    });
    const waste = design.waste.value ?? 0;
    return explained({
      name: `${material} on ${component}`,
      value: layerCuYd({ areaSqFt: areas[component], depthInches, waste }),
      unit: 'cu yd',
      formula: 'area x mean depth / 324 x (1 + waste)',
      source: '324 sf-in per cubic yard, exact',
      inputs: [area, depth, limit, design.rootShare, design.waste],
    });
  });
  const value = parts.reduce((sum, part) => sum + (part.value ?? 0), 0);
  return explained({ name: material, value, unit: 'cu yd', formula: 'sum', inputs: parts });
}

const LIMITS = {
  compost: 'takeoff.root-protection-compost-inches',
  'wood chips': 'takeoff.root-protection-chip-inches',
} as const;

const DENSITIES = { compost: 'density.compost', 'wood chips': 'density.wood-chips' } as const;

/** Pounds and truck loads of a material whose cubic yards are known. */
export function deliveryNodes(
  material: LayerDesign['material'],
  cubicYards: ExplainedNode,
  overrides: Overrides,
): { pounds: ExplainedNode; loads: ExplainedNode } {
  const density = coefficientNode(DENSITIES[material], overrides);
  const box = coefficientNode('truck.box', overrides);
  const payload = coefficientNode('truck.payload', overrides);
  const volume = cubicYards.value ?? 0;
  const weight = poundsOf(volume, density.value ?? 0);
  const pounds = explained({
    name: `${material} weight`,
    value: weight,
    unit: 'lb',
    formula: 'cubic yards x density',
    inputs: [cubicYards, density],
  });
  const truck = { boxCuYd: box.value ?? 0, payloadLb: payload.value ?? 0 };
  const loads = explained({
    name: `${material} loads`,
    value: loadsOf({ cubicYards: volume, pounds: weight }, truck),
    unit: 'loads',
    formula: 'ceil(max(cubic yards / box, pounds / payload))',
    inputs: [cubicYards, pounds, box, payload],
  });
  return { pounds, loads };
}
