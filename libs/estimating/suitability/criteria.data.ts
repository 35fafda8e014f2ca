import type { Breakpoint } from './value-function.js';

/** What makes a place suitable, with its share of all weight and the worth of each measure. */
export interface SuitabilityCriterion {
  readonly id: CriterionId;
  readonly name: string;
  readonly unit: string;
  readonly weightPercent: number;
  readonly breakpoints: readonly Breakpoint[];
}

export const CRITERION_IDS = [
  'visibility',
  'sun',
  'kitchen',
  'water',
  'soil',
  'truck',
  'zone',
] as const;
export type CriterionId = (typeof CRITERION_IDS)[number];

/** Weights and breakpoints are judgement: no published authority sets them. */
export const CRITERIA_SOURCE = 'judgement: planning default with no published authority';

/** No two of them measure one thing. Mowing, stormwater and food are benefits of a plan, and counted there. */
export const CRITERIA: readonly SuitabilityCriterion[] = [
  {
    id: 'visibility',
    name: 'people who walk past',
    unit: 'people/day',
    weightPercent: 20,
    breakpoints: [
      [0, 0],
      [500, 0.3],
      [2000, 0.8],
      [4000, 1],
    ],
  },
  {
    id: 'sun',
    name: 'hours of sun',
    unit: 'h/day',
    weightPercent: 20,
    breakpoints: [
      [3, 0],
      [6, 0.7],
      [8, 1],
    ],
  },
  {
    id: 'kitchen',
    name: 'distance to a kitchen',
    unit: 'ft',
    weightPercent: 15,
    breakpoints: [
      [200, 1],
      [1000, 0.5],
      [2500, 0],
    ],
  },
  {
    id: 'water',
    name: 'distance to water',
    unit: 'ft',
    weightPercent: 15,
    breakpoints: [
      [50, 1],
      [200, 0.5],
      [600, 0],
    ],
  },
  {
    id: 'soil',
    name: 'organic matter of the soil',
    unit: '%',
    weightPercent: 10,
    breakpoints: [
      [1, 0],
      [3, 0.6],
      [5, 1],
    ],
  },
  {
    id: 'truck',
    name: 'truck access',
    unit: 'yes/no',
    weightPercent: 10,
    breakpoints: [
      [0, 0],
      [1, 1],
    ],
  },
  {
    id: 'zone',
    name: 'sites that its zone has already',
    unit: 'sites',
    weightPercent: 10,
    breakpoints: [
      [0, 1],
      [2, 0.3],
      [4, 0],
    ],
  },
];
