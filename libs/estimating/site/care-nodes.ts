import { type CareCoefficients, COMPONENTS, type Component } from '#domain/component.js';
import { careHoursPer1000SqFt } from '../care-hours/decay.js';
import { explained, type ExplainedNode, given, sumOf } from '../explained.js';

export interface CareNodes {
  readonly areas: Readonly<Record<Component, number>>;
  readonly care: Readonly<Record<Component, CareCoefficients>>;
}

const FORMULA = 'area / 1,000 x (mature + (first - mature) e^(-k (age - 1)))';

/** Care of a site in each year of age from 1 to `years`, opened by component. */
export function careByAge({ areas, care }: CareNodes, years: number): ExplainedNode[] {
  const present = COMPONENTS.filter((component) => areas[component] > 0);
  const inputs = new Map(present.map((c) => [c, careInputs(areas[c], care[c])]));
  return Array.from({ length: years }, (_, index) => {
    const age = index + 1;
    const parts = present.map((component) =>
      explained({
        name: `care of ${component}, year ${age}`,
        value: (areas[component] / 1000) * careHoursPer1000SqFt(care[component], age),
        unit: 'h/yr',
        formula: FORMULA,
        source: sourceOf(care[component]),
        inputs: inputs.get(component) ?? [],
      }),
    );
    return sumOf(`care in year ${age}`, 'h/yr', parts);
  });
}

/** Picking, washing and recording in a year of age. */
export function harvestNode({ areas, care }: CareNodes, age: number): ExplainedNode {
  const bearing = COMPONENTS.filter((c) => areas[c] > 0 && care[c].harvestHours > 0);
  const parts = bearing.map((component) => {
    const { harvestHours } = care[component];
    const share = bearingAt(care[component].bearing, age);
    return explained({
      name: `harvest of ${component}, year ${age}`,
      value: (areas[component] / 1000) * harvestHours * share,
      unit: 'h/yr',
      formula: 'area / 1,000 x hours of a full crop x share borne',
      source: sourceOf(care[component]),
      inputs: [
        given('area', { value: areas[component], unit: 'sf' }, 'site x share'),
        given(
          'hours of a full crop',
          { value: harvestHours, unit: 'h/1,000 sf-yr' },
          sourceOf(care[component]),
        ),
        given('share borne', { value: share, unit: 'share' }, 'bearing by age'),
      ],
    });
  });
  return sumOf(`harvest in year ${age}`, 'h/yr', parts);
}

/** Share of a full crop at an age of 1 or more: the last entry holds from there on. */
export function bearingAt(bearing: readonly number[], age: number): number {
  return bearing[Math.min(age, bearing.length) - 1] ?? 0;
}

function careInputs(area: number, care: CareCoefficients): ExplainedNode[] {
  const source = sourceOf(care);
  return [
    given('area', { value: area, unit: 'sf' }, 'site x share'),
    given('first-year care', { value: care.firstYearHours, unit: 'h/1,000 sf-yr' }, source),
    given('mature care', { value: care.matureHours, unit: 'h/1,000 sf-yr' }, source),
    given('decay k', { value: care.decayPerYear, unit: '1/yr' }, source),
  ];
}

function sourceOf({ provenance }: Pick<CareCoefficients, 'provenance'>): string {
  return `${provenance.basis}: ${provenance.source}`;
}
