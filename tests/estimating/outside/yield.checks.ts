import { bearingShare } from '#estimating/yield/bearing.js';
import { CROP_GROUPS } from '#estimating/yield/bearing.data.js';
import { gini } from '#estimating/yield/equity.js';
import type { OutsideCheck } from './outside-check.js';

const blueberry = CROP_GROUPS.blueberry;

export const yieldChecks: readonly OutsideCheck[] = [
  {
    formula: 'yield',
    what: 'blueberry, pounds per square foot in full bearing',
    ground: 'printed',
    source: 'Virginia Cooperative Extension 426-840, Table 1: 5 lb on 6 x 5 ft',
    unit: 'lb/sf',
    expected: 5 / 30,
    tolerance: 1e-9,
    actual: () =>
      (blueberry.poundsPerPlant[0] + blueberry.poundsPerPlant[1]) / 2 / blueberry.sqFtPerPlant,
  },
  {
    formula: 'yield',
    what: 'blueberry, share of a full crop 3 years after planting (15 to 25 %)',
    ground: 'printed, quoted from memory',
    source: 'Oregon State University EM 8526',
    unit: 'share',
    expected: 0.2,
    tolerance: 0.05,
    actual: () => bearingShare({ ...blueberry, age: 4 }),
  },
  {
    formula: 'yield',
    what: 'blueberry, share of a full crop 5 years after planting (50 to 60 %)',
    ground: 'printed, quoted from memory',
    source: 'Oregon State University EM 8526',
    unit: 'share',
    expected: 0.55,
    tolerance: 0.0501,
    actual: () => bearingShare({ ...blueberry, age: 6 }),
  },
  {
    formula: 'yield',
    what: 'hazelnut, first harvest 3 years after planting and none after 2',
    ground: 'printed',
    source: 'Oregon State University Extension: 3 to 4 years',
    unit: 'age',
    expected: 4,
    tolerance: 0,
    actual: () =>
      [1, 2, 3, 4, 5].find((age) => bearingShare({ ...CROP_GROUPS.hazelnut, age }) > 0) ?? 0,
  },
  {
    formula: 'yield',
    what: 'Gini of two equal zones of which one has all sites',
    ground: 'exact identity',
    source: 'definition of the Gini coefficient: 1 - 1/n for n equal shares',
    unit: '-',
    expected: 0.5,
    tolerance: 1e-12,
    actual: () =>
      gini([
        { zone: 'a', sites: 4, residents: 100 },
        { zone: 'b', sites: 0, residents: 100 },
      ]),
  },
];
