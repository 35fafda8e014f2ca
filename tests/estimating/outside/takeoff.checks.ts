import { rollFactor, sheetFactor } from '#estimating/takeoff/cardboard.js';
import { layerCuYd, poundsOf } from '#estimating/takeoff/layers.js';
import { loadsOf } from '#estimating/takeoff/loads.js';
import { meanInches } from '#estimating/takeoff/root-exclusion.js';
import type { OutsideCheck } from './outside-check.js';

/** Sites with compost and chips in cubic yards at 5 % waste, worked by hand. */
const SITES = [
  ['9,700 sf at 4 and 3 in', 9700, 4, 126, 94],
  ['6,200 sf at 4 and 3 in', 6200, 4, 80, 60],
  ['17,500 sf at 3 and 3 in', 17500, 3, 170, 170],
  ['8,900 sf at 4 and 3 in', 8900, 4, 115, 87],
] as const;

const HAND = 'area x depth / 324 x 1.05 by hand';

const sites = SITES.flatMap(([name, areaSqFt, compostInches, compost, chips]): OutsideCheck[] => [
  yards(`compost for ${name}`, compost, { areaSqFt, depthInches: compostInches }),
  yards(`chips for ${name}`, chips, { areaSqFt, depthInches: 3 }),
]);

function yards(
  what: string,
  expected: number,
  layer: { areaSqFt: number; depthInches: number },
): OutsideCheck {
  return {
    formula: 'takeoff',
    what,
    ground: 'arithmetic done by hand',
    source: HAND,
    unit: 'cu yd',
    expected,
    tolerance: 0.5,
    actual: () => layerCuYd({ ...layer, waste: 0.05 }),
  };
}

const compost = (): number => layerCuYd({ areaSqFt: 12_000, depthInches: 4, waste: 0 });
const chips = (): number => layerCuYd({ areaSqFt: 12_000, depthInches: 3, waste: 0 });
const LOADS = [
  [9700, 14],
  [6200, 10],
  [8900, 14],
] as const;

export const takeoffChecks: readonly OutsideCheck[] = [
  ...sites,
  {
    formula: 'takeoff',
    what: '324 sf an inch deep',
    ground: 'exact identity',
    source: '27 cu ft to the yard, 12 in to the foot',
    unit: 'cu yd',
    expected: 1,
    tolerance: 1e-12,
    actual: () => layerCuYd({ areaSqFt: 324, depthInches: 1, waste: 0 }),
  },
  {
    formula: 'takeoff',
    what: 'one sf an inch deep',
    ground: 'printed',
    source: 'Deschutes Recycling: multiply sf by inches by 0.0031',
    unit: 'cu yd',
    expected: 0.0031,
    tolerance: 0.00005,
    actual: () => layerCuYd({ areaSqFt: 1, depthInches: 1, waste: 0 }),
  },
  {
    formula: 'takeoff',
    what: 'weight of 12,000 sf at 4 in compost and 3 in chips',
    ground: 'common practice, no published source',
    source: 'such a build takes about 200,000 lb of organic matter',
    unit: 'lb',
    expected: 200_000,
    tolerance: 5_000,
    actual: () => poundsOf(compost(), 1000) + poundsOf(chips(), 500),
  },
  {
    formula: 'takeoff',
    what: 'the same by hand',
    ground: 'arithmetic done by hand',
    source: '148.148 x 1,000 + 111.111 x 500',
    unit: 'lb',
    expected: 203_703.7,
    tolerance: 0.05,
    actual: () => poundsOf(compost(), 1000) + poundsOf(chips(), 500),
  },
  {
    formula: 'takeoff',
    what: 'gross over net of a 4 x 3 ft sheet with 6 in lap',
    ground: 'arithmetic done by hand',
    source: '12 / (3.5 x 2.5)',
    unit: 'factor',
    expected: 1.3714,
    tolerance: 5e-5,
    actual: () => sheetFactor({ lengthFt: 4, widthFt: 3, lapInches: 6 }),
  },
  {
    formula: 'takeoff',
    what: 'gross over net of a 6 ft roll with 6 in lap',
    ground: 'arithmetic done by hand',
    source: '6 / 5.5',
    unit: 'factor',
    expected: 1.0909,
    tolerance: 5e-5,
    actual: () => rollFactor(6, 6),
  },
  {
    formula: 'takeoff',
    what: 'compost of 3,400 sf with 31 % in root protection held to 1 in',
    ground: 'arithmetic done by hand',
    source: '(4 x 0.69 + 1 x 0.31) x 3,400 / 324 x 1.05',
    unit: 'cu yd',
    expected: 34,
    tolerance: 0.5,
    actual: () =>
      layerCuYd({
        areaSqFt: 3400,
        depthInches: meanInches({
          areaSqFt: 3400,
          designInches: 4,
          protectedShare: 0.31,
          mostInches: 1,
        }),
        waste: 0.05,
      }),
  },
  ...LOADS.map(([areaSqFt, expected]): OutsideCheck => ({
    formula: 'takeoff',
    what: `loads of 16 cu yd for ${areaSqFt} sf at 4 and 3 in, each material apart`,
    ground: 'arithmetic done by hand',
    source: 'cubic yards above, divided by 16 and rounded up',
    unit: 'loads',
    expected,
    tolerance: 0,
    actual: () =>
      [4, 3]
        .map((depthInches) => layerCuYd({ areaSqFt, depthInches, waste: 0.05 }))
        .map((cubicYards) => loadsOf({ cubicYards, pounds: 0 }, { boxCuYd: 16, payloadLb: 22_000 }))
        .reduce((a, b) => a + b, 0),
  })),
];
