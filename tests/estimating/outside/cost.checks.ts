import { nper, pmt, pv } from 'financial';
import { principalNeeded, giftForPrincipal, requiredReturn } from '#estimating/cost/endowment.js';
import { fundLedger } from '#estimating/cost/fund-ledger.js';
import { mowingAvoided } from '#estimating/cost/mowing.js';
import {
  growingAnnuity,
  growingPerpetuity,
  presentValue,
  spv,
  uca,
  ucr,
  upv,
  upvStar,
} from '#estimating/cost/present-value.js';
import { strandedDollars } from '#estimating/gates/construction.js';
import { dollarsToCents } from '#units/cents.js';
import type { OutsideCheck } from './outside-check.js';

const TABLE =
  'Blocher et al., Cost Management, 9th ed., table 2 of chapter 12 (present value of an annuity)';
const ANNUITIES = [
  [0.04, 10, 8.111],
  [0.04, 20, 13.59],
  [0.05, 10, 7.722],
  [0.05, 20, 12.462],
  [0.06, 10, 7.36],
  [0.06, 20, 11.47],
  [0.07, 20, 10.594],
  [0.08, 5, 3.993],
  [0.1, 10, 6.145],
  [0.12, 15, 6.811],
] as const;

const annuities = ANNUITIES.map(([rate, years, expected]): OutsideCheck => ({
  formula: 'cost',
  what: `annuity of $1 over ${years} years at ${Math.round(rate * 100)} %`,
  ground: 'printed',
  source: TABLE,
  unit: '$',
  expected,
  tolerance: 0.0005,
  actual: () => upv(rate, years),
}));

const NIST = 'NIST Handbook 135 supplement, 3 % (SPV to 3, UPV to 2 decimals)';
const DISCOUNTS = [
  ['SPV, 10 years at 3 %', 0.744, 0.0005, () => spv(0.03, 10)],
  ['SPV, 25 years at 3 %', 0.478, 0.0005, () => spv(0.03, 25)],
  ['UPV, 10 years at 3 %', 8.53, 0.005, () => upv(0.03, 10)],
  ['UPV, 25 years at 3 %', 17.41, 0.005, () => upv(0.03, 25)],
] as const;

const discounts = DISCOUNTS.map(([what, expected, tolerance, actual]): OutsideCheck => ({
  formula: 'cost',
  what,
  ground: 'printed, quoted from memory',
  source: NIST,
  unit: '$',
  expected,
  tolerance,
  actual,
}));

const FINANCIAL = 'financial 0.2.4';

/** First year in which 8,500 sf at $8, growing 4 %, exceeds $75,000, growing 2 %. */
function firstShortYear(carryYears: number): number {
  const years = Array.from({ length: 20 }, (_, i) => ({
    received: dollarsToCents(75_000 * 1.02 ** i),
    wanted: dollarsToCents(8_500 * 8 * 1.04 ** i),
  }));
  return fundLedger(years, carryYears).findIndex(({ short }) => short > 0) + 1;
}

export const costChecks: readonly OutsideCheck[] = [
  ...annuities,
  ...discounts,
  {
    formula: 'cost',
    what: 'UCR over 15 years at 3 % is the payment on a loan of $1',
    ground: 'second library',
    source: FINANCIAL,
    unit: '$',
    expected: -pmt(0.03, 15, 1),
    tolerance: 1e-12,
    actual: () => ucr(0.03, 15),
  },
  {
    formula: 'cost',
    what: 'UPV over 12 years at 4.5 % is the present value of $1 a year',
    ground: 'second library',
    source: FINANCIAL,
    unit: '$',
    expected: -pv(0.045, 12, 1),
    tolerance: 1e-10,
    actual: () => upv(0.045, 12),
  },
  {
    formula: 'cost',
    what: 'SPV over 12 years at 4.5 % is the present value of a single $1',
    ground: 'second library',
    source: FINANCIAL,
    unit: '$',
    expected: -pv(0.045, 12, 0, 1),
    tolerance: 1e-12,
    actual: () => spv(0.045, 12),
  },
  {
    formula: 'cost',
    what: 'years in which $1 a year repays UPV(5 %, 17)',
    ground: 'second library',
    source: FINANCIAL,
    unit: 'yr',
    expected: 17,
    tolerance: 1e-9,
    actual: () => Number(nper(0.05, -1, upv(0.05, 17))),
  },
  {
    formula: 'cost',
    what: 'growing annuity over 20 years against its sum term by term',
    ground: 'exact identity',
    source: 'sum of a geometric series, 5 % discount and 2 % growth',
    unit: '$',
    expected: Array.from({ length: 20 }, (_, i) => 1.02 ** i / 1.05 ** (i + 1)).reduce(
      (a, b) => a + b,
      0,
    ),
    tolerance: 1e-12,
    actual: () => growingAnnuity({ discount: 0.05, growth: 0.02, years: 20 }),
  },
  {
    formula: 'cost',
    what: 'UPV* is the number of years where growth equals the discount',
    ground: 'exact identity',
    source: 'NIST Handbook 135, definition of UPV*',
    unit: '$',
    expected: 14,
    tolerance: 1e-9,
    actual: () => upvStar({ discount: 0.03, growth: 0.03, years: 14 }),
  },
  {
    formula: 'cost',
    what: 'UCA over 8 years is UPV carried forward',
    ground: 'exact identity',
    source: 'UCA = UPV x (1 + d)^n',
    unit: '$',
    expected: upv(0.06, 8) * 1.06 ** 8,
    tolerance: 1e-10,
    actual: () => uca(0.06, 8),
  },
  {
    formula: 'cost',
    what: 'a growing annuity of 5,000 years is the perpetuity',
    ground: 'exact identity',
    source: 'limit of the annuity',
    unit: '$',
    expected: growingAnnuity({ discount: 0.05, growth: 0.02, years: 5000 }),
    tolerance: 1e-9,
    actual: () => growingPerpetuity(0.05, 0.02),
  },
  {
    formula: 'cost',
    what: 'present value of equal payments is UPV',
    ground: 'exact identity',
    source: 'definition',
    unit: '$',
    expected: 300 * upv(0.03, 10),
    tolerance: 1e-9,
    actual: () =>
      presentValue(
        0.03,
        Array.from({ length: 10 }, () => 300),
      ),
  },
  {
    formula: 'cost',
    what: 'gift that endows $6,000 a year at 4.053 % with 6 % taken first',
    ground: 'printed',
    source: 'Southern Illinois University Foundation, siuf.org/dendow.asp',
    unit: '$',
    expected: 157_488,
    tolerance: 0.5,
    actual: () => giftForPrincipal(principalNeeded(6_000, 0.04053), 0.06),
  },
  {
    formula: 'cost',
    what: 'principal for $8,354 a year at 4.5 %',
    ground: 'arithmetic done by hand',
    source: '8,354 / 0.045',
    unit: '$',
    expected: 185_644,
    tolerance: 0.5,
    actual: () => principalNeeded(8_354, 0.045),
  },
  {
    formula: 'cost',
    what: 'return required by 4 % spending, 0.65 % fees and 2.5 % inflation',
    ground: 'printed',
    source: 'worked answer on an endowment, analystforum.com/t/endowment/107987',
    unit: 'share',
    expected: 0.0729,
    tolerance: 0.00005,
    actual: () => requiredReturn({ payout: 0.04, fees: 0.0065, costGrowth: 0.025 }),
  },
  {
    formula: 'cost',
    what: 'first short year of a build a year where nothing is carried',
    ground: 'arithmetic done by hand',
    source: '68,000 x 1.04^(n-1) against 75,000 x 1.02^(n-1)',
    unit: 'year',
    expected: 7,
    tolerance: 0,
    actual: () => firstShortYear(0),
  },
  {
    formula: 'cost',
    what: 'first short year where everything is carried',
    ground: 'arithmetic done by hand',
    source: 'the same, summed',
    unit: 'year',
    expected: 11,
    tolerance: 0,
    actual: () => firstShortYear(Infinity),
  },
  {
    formula: 'cost',
    what: 'mowing of 8,500 sf avoided in a year',
    ground: 'arithmetic done by hand',
    source: '8.5 x 26 x 0.035, about 8 h',
    unit: 'h',
    expected: 7.735,
    tolerance: 1e-9,
    actual: () =>
      mowingAvoided({
        turfSqFt: 8_500,
        cutsPerYear: 26,
        hoursPer1000SqFtCut: 0.035,
        gallonsPerHour: 0,
        kgCarbonPerGallon: 0,
      }).hours,
  },
  {
    formula: 'gates',
    what: 'capital stranded by works 3 years after a $140,000 build, 70 % certain',
    ground: 'arithmetic done by hand',
    source: '140,000 x 4/7 x 0.70',
    unit: '$',
    expected: 56_000,
    tolerance: 1e-6,
    actual: () =>
      strandedDollars({
        capital: 140_000,
        plantedYear: 2028,
        worksFrom: 2031,
        certaintyPercent: 70,
        paybackYears: 7,
      }),
  },
];
