import {
  accumulatedHours,
  accumulation,
  yearsUntilFull,
} from '#estimating/care-hours/accumulation.js';
import { careOfComponents } from '#estimating/care-hours/default-care.js';
import { careHoursOfSite } from '#estimating/care-hours/site-care.js';
import { haulFactor } from '#estimating/install-hours/haul.js';
import { learningShare } from '#estimating/install-hours/learning.js';
import { chanceOf, chanceOfAtLeast, logGamma } from '#estimating/install-hours/turnout.js';
import { hiringDates, latestRequest, leadMonths } from '#estimating/labor-supply/hiring.js';
import { productiveHours } from '#estimating/labor-supply/staff.js';
import type { OutsideCheck } from './outside-check.js';

/** A 9,600 sf site of mixed components, and the same scaled to 8,500 sf. */
export const MIXED_SITE = {
  'annual-bed': 960,
  'perennial-bed': 1840,
  woody: 2400,
  'rain-garden': 800,
  meadow: 800,
  path: 2800,
} as const;

const care = () => careOfComponents();
const at = (age: number): number => careHoursOfSite({ areasSqFt: MIXED_SITE, care: care(), age });
const HAND = 'hand calculation from the care table (150/120/0.7 and so on)';

const yearly = [508, 378, 311, 277, 260, 251, 246, 244, 243, 242].map(
  (expected, index): OutsideCheck => ({
    formula: 'care-hours',
    what: `care of the 9,600 sf mixed site in year ${index + 1}`,
    ground: 'arithmetic done by hand',
    source: HAND,
    unit: 'h',
    expected,
    tolerance: 0.51,
    actual: () => at(index + 1),
  }),
);

const SCALE = 8500 / 9600;
const scaled = Object.fromEntries(
  Object.entries(MIXED_SITE).map(([component, area]) => [component, area * SCALE]),
);

/** One site of 8,500 sf in each year, summed age by age. */
export function sumOfAges(years: number): number {
  return Array.from({ length: years }, (_, i) =>
    careHoursOfSite({ areasSqFt: scaled, care: care(), age: i + 1 }),
  ).reduce((a, b) => a + b, 0);
}

const cumulative = (
  [
    [5, 1535],
    [10, 2621],
    [20, 4758],
    [30, 6894],
  ] as const
).map(([years, expected]): OutsideCheck => ({
  formula: 'care-hours',
  what: `${years} equal 8,500 sf sites at the ages 1 to ${years}`,
  ground: 'arithmetic done by hand',
  source: HAND,
  unit: 'h',
  expected,
  tolerance: 1,
  actual: () => sumOfAges(years),
}));

export const careChecks: readonly OutsideCheck[] = [
  ...yearly,
  ...cumulative,
  {
    formula: 'care-hours',
    what: 'mature care of the 9,600 sf mixed site',
    ground: 'arithmetic done by hand',
    source: HAND,
    unit: 'h',
    expected: 241.3,
    tolerance: 0.05,
    actual: () => accumulation(MIXED_SITE, care()).matureHours,
  },
  {
    formula: 'care-hours',
    what: 'what a row of young sites costs above mature care (E)',
    ground: 'exact identity',
    source: 'sum of a geometric series',
    unit: 'h',
    expected: 547.6,
    tolerance: 0.05,
    actual: () => accumulation(MIXED_SITE, care()).youngHours,
  },
  {
    formula: 'care-hours',
    what: 'closed form against 10 sites summed age by age, in parts of a thousand',
    ground: 'exact identity',
    source: 'sum of a geometric series',
    unit: '1/1,000',
    expected: 0,
    tolerance: 1,
    actual: () => 1000 * (accumulatedHours(accumulation(scaled, care()), 10) / sumOfAges(10) - 1),
  },
  {
    formula: 'care-hours',
    what: 'site that is one too many for 3,340 h a year',
    ground: 'arithmetic done by hand',
    source: HAND,
    unit: 'sites',
    expected: 14,
    tolerance: 0,
    actual: () => Math.floor(yearsUntilFull(accumulation(scaled, care()), 3340)) + 1,
  },
  {
    formula: 'care-hours',
    what: 'site that is one too many for 1,306 h of a summer with 0.45 of the care',
    ground: 'arithmetic done by hand',
    source: HAND,
    unit: 'sites',
    expected: 12,
    tolerance: 0,
    actual: () => Math.floor(yearsUntilFull(accumulation(scaled, care()), 1306 / 0.45)) + 1,
  },
];

export const installChecks: readonly OutsideCheck[] = [
  {
    formula: 'install-hours',
    what: 'an 80 % curve at the 8th unit',
    ground: 'exact identity',
    source: 'T. P. Wright 1936: each doubling leaves 80 %, so 0.8 cubed',
    unit: 'share',
    expected: 0.512,
    tolerance: 1e-12,
    actual: () => learningShare({ builds: 8, rate: 0.8, floor: 0 }),
  },
  {
    formula: 'install-hours',
    what: 'exactly 3 of 10 come at a show rate of 0.2',
    ground: 'printed, quoted from memory',
    source: 'binomial tables (0.2013)',
    unit: 'chance',
    expected: 0.2013,
    tolerance: 5e-5,
    actual: () => chanceOf(3, { signUps: 10, showRate: 0.2, showSpread: 0 }),
  },
  {
    formula: 'install-hours',
    what: 'at least 11 of 20 come at a show rate of 0.5',
    ground: 'printed, quoted from memory',
    source: 'binomial tables (1 - 0.5881)',
    unit: 'chance',
    expected: 0.4119,
    tolerance: 5e-5,
    actual: () => chanceOfAtLeast(11, { signUps: 20, showRate: 0.5, showSpread: 0 }),
  },
  {
    formula: 'install-hours',
    what: 'exactly 4 of 9 come when every show rate is equally likely',
    ground: 'exact identity',
    source: 'beta-binomial with both parameters 1 is uniform on 0 to n',
    unit: 'chance',
    expected: 1 / 10,
    tolerance: 1e-9,
    actual: () => chanceOf(4, { signUps: 9, showRate: 0.5, showSpread: Math.sqrt(1 / 12) }),
  },
  {
    formula: 'install-hours',
    what: 'logarithm of gamma at one half',
    ground: 'exact identity',
    source: 'gamma(1/2) is the square root of pi',
    unit: '-',
    expected: Math.log(Math.PI) / 2,
    tolerance: 1e-9,
    actual: () => logGamma(0.5),
  },
  {
    formula: 'install-hours',
    what: 'logarithm of gamma at 21',
    ground: 'exact identity',
    source: '20! is 2432902008176640000',
    unit: '-',
    expected: Math.log(2432902008176640000),
    tolerance: 1e-9,
    actual: () => logGamma(21),
  },
  {
    formula: 'install-hours',
    what: 'hauling 220 ft by hand',
    ground: 'arithmetic done by hand',
    source: '1 + 0.0018 x 170, about 31 % more',
    unit: 'factor',
    expected: 1.306,
    tolerance: 1e-12,
    actual: () => haulFactor({ haulFeet: 220, freeFeet: 50, perFoot: 0.0018 }),
  },
];

const PATH = {
  requestMonth: 11,
  decisionMonth: 3,
  fundingMonth: 7,
  recruitMonths: 3,
  rampMonths: 3,
};

export const supplyChecks: readonly OutsideCheck[] = [
  {
    formula: 'labor-supply',
    what: 'productive hours of a federal work year',
    ground: 'printed',
    source: 'SSA POMS DI 39503.230: 2,080 less 68.0, 75.0, 155.7 and 4.8',
    unit: 'h',
    expected: 1776.5,
    tolerance: 1e-9,
    actual: () =>
      productiveHours({
        paidHours: 2080,
        leave: (68 + 75 + 155.7) / 2080,
        meetings: 4.8 / 2080,
        weather: 0,
      }),
  },
  {
    formula: 'labor-supply',
    what: 'productive hours with the default losses',
    ground: 'arithmetic done by hand',
    source: '2,080 x 0.75',
    unit: 'h',
    expected: 1560,
    tolerance: 1e-9,
    actual: () => productiveHours({ paidHours: 2080, leave: 0.12, meetings: 0.08, weather: 0.05 }),
  },
  {
    formula: 'labor-supply',
    what: 'year of the November request for a gardener at full use by June 2034',
    ground: 'arithmetic done by hand',
    source: 'November, decided in March, funded 1 July, 3 months to recruit, 3 to learn',
    unit: 'year',
    expected: 2032,
    tolerance: 0,
    actual: () => latestRequest(PATH, { year: 2034, month: 6 }).request.year,
  },
  {
    formula: 'labor-supply',
    what: 'months from the request to full use',
    ground: 'arithmetic done by hand',
    source: 'November to the second January after',
    unit: 'months',
    expected: 14,
    tolerance: 0,
    actual: () => leadMonths(hiringDates(PATH, 2032)),
  },
];
