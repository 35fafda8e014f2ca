import { type CareCoefficients, type Component, type ComponentShares } from '#domain/component.js';
import type { SiteFacts } from '#domain/site.js';
import { mowingAvoided } from '../cost/mowing.js';
import { coefficientNode, type Overrides } from '../defaults/coefficients.js';
import { explained, type ExplainedNode, given } from '../explained.js';
import { curveNumber } from '../water/curve-numbers.data.js';
import { runoffSavedCuFt } from '../water/runoff.js';
import { coverBefore, plantedCurveNumber } from '../water/site-cover.js';
import { soilGroupOf } from '../water/soil-group.js';
import { harvestPounds } from '../yield/harvest-pounds.js';
import { bearingAt } from './care-nodes.js';

export interface FoodNodes {
  readonly areas: Readonly<Record<Component, number>>;
  readonly care: Readonly<Record<Component, CareCoefficients>>;
  readonly overrides: Overrides;
}

const BEARERS = { 'annual-bed': 'annual beds', woody: 'woody plants' } as const;

/** Pounds of food a year of age brings, by component that bears. */
export function foodNodes({ areas, care, overrides }: FoodNodes, age: number): ExplainedNode[] {
  const losses = coefficientNode('yield.losses', overrides);
  return (['annual-bed', 'woody'] as const)
    .filter((component) => areas[component] > 0 && care[component].harvestHours > 0)
    .map((component) => {
      const rate = coefficientNode(`yield.${component}`, overrides);
      const bearing = bearingAt(care[component].bearing, age);
      return explained({
        name: `food from ${BEARERS[component]}, year ${age}`,
        value: harvestPounds({
          bedSqFt: areas[component],
          poundsPerSqFt: rate.value ?? 0,
          bearing,
          losses: losses.value ?? 0,
        }),
        unit: 'lb/yr',
        formula: 'bed x yield x share borne x (1 - losses)',
        inputs: [
          given('bed', { value: areas[component], unit: 'sf' }, 'site x share'),
          rate,
          given('share borne', { value: bearing, unit: 'share' }, 'bearing by age'),
          losses,
        ],
      });
    });
}

export interface RunoffNode {
  readonly areaSqFt: number;
  readonly shares: ComponentShares;
  readonly facts: Pick<SiteFacts, 'cover' | 'soil'>;
  readonly rainInches: number;
}

/** Cubic feet less runoff from one storm; unknown where cover or soil is. No treatment credit follows. */
export function runoffNode({ areaSqFt, shares, facts, rainInches }: RunoffNode): ExplainedNode {
  const soil = soilGroupOf(facts.soil);
  const cover = facts.cover.known ? coverBefore(facts.cover.value) : undefined;
  const known = soil.known && cover !== undefined;
  const before = known ? curveNumber(cover, soil.value) : null;
  const after = known ? plantedCurveNumber(shares, soil.value) : null;
  const saved = known
    ? runoffSavedCuFt({
        areaSqFt,
        rainInches,
        curveNumberBefore: curveNumber(cover, soil.value),
        curveNumberAfter: plantedCurveNumber(shares, soil.value),
      })
    : null;
  return explained({
    name: 'runoff saved in the storm shown',
    value: saved,
    unit: 'cu ft',
    formula: 'area x (Q before - Q after) / 12, Q = (P - 0.2 S)^2 / (P + 0.8 S)',
    source: 'TR-55 (1986), equation 2-3; planning indication only',
    inputs: [
      given('area', { value: areaSqFt, unit: 'sf' }, 'boundary'),
      given('storm', { value: rainInches, unit: 'in' }, 'chosen storm'),
      given(
        'curve number before',
        { value: before, unit: 'CN' },
        'TR-55 table 2-2, cover and soil',
      ),
      given('curve number after', { value: after, unit: 'CN' }, 'TR-55 table 2-2, covers assumed'),
    ],
  });
}

/** Hours of mowing that end, unknown while the cover is; shown beside the care that begins, never netted in silence. */
export function mowingNode(
  areaSqFt: number,
  cover: SiteFacts['cover'],
  overrides: Overrides,
): ExplainedNode {
  const cuts = coefficientNode('mowing.cuts', overrides);
  const perCut = coefficientNode('mowing.hours-per-cut', overrides);
  const turfSqFt = cover.known ? (cover.value.includes('turf') ? areaSqFt : 0) : null;
  const { hours } = mowingAvoided({
    turfSqFt: turfSqFt ?? 0,
    cutsPerYear: cuts.value ?? 0,
    hoursPer1000SqFtCut: perCut.value ?? 0,
    gallonsPerHour: 0,
    kgCarbonPerGallon: 0,
  });
  return explained({
    name: 'mowing avoided',
    value: turfSqFt === null ? null : hours,
    unit: 'h/yr',
    formula: 'turf / 1,000 x cuts x hours per cut',
    inputs: [given('turf', { value: turfSqFt, unit: 'sf' }, 'boundary and cover'), cuts, perCut],
  });
}
