/** A number outside `plausible` is a warning; outside `possible`, an error. Both ends are included. */
export interface Range {
  /** Path within the record, keys only. `*` stands for every key. */
  readonly path: readonly string[];
  readonly unit: string;
  readonly plausible: readonly [low: number, high: number];
  readonly possible?: readonly [low: number, high: number];
  readonly code: string;
  readonly remedy: string;
  /** A value that says "none" is no slip of a unit. */
  readonly noneIsFine?: true;
}

type Bounds = readonly [low: number, high: number];

const usual = (path: string, unit: string, plausible: Bounds): Range => ({
  path: path.split('.'),
  unit,
  plausible,
  code: 'VALUE-UNUSUAL',
  remedy: `Check the value; the field is in ${unit}.`,
});

const orNone = (range: Range): Range => ({ ...range, noneIsFine: true });

const inDepth = (path: string): Range => ({
  path: path.split('.'),
  unit: 'inches',
  plausible: [0.5, 12],
  code: 'DEPTH-UNUSUAL',
  remedy: 'Give loose depth in inches, not in feet or centimeters.',
  noneIsFine: true,
});

/** Bounds from the domain brief: site inventory, soil survey, access and light. */
export const SITE_RANGES: readonly Range[] = [
  usual('areaSqFt', 'square feet', [500, 60_000]),
  usual('facts.ph', 'pH', [4.5, 8.5]),
  usual('facts.organicMatterPercent', 'percent', [0.5, 15]),
  {
    path: ['facts', 'leadMgPerKg'],
    unit: 'mg/kg',
    plausible: [5, 5000],
    possible: [1, 100_000],
    code: 'FACT-LEAD-UNIT',
    remedy: 'Give total lead in mg/kg (the same as ppm), not in percent: 0.02 % is 200 mg/kg.',
  },
  usual('facts.slopePercent', 'percent', [0, 33]),
  usual('facts.sunHours', 'hours a day', [2, 13]),
  usual('facts.walkersPerDay', 'people a day', [0, 20_000]),
  usual('facts.waterFeet', 'feet', [0, 2_000]),
  usual('facts.kitchenFeet', 'feet', [0, 10_000]),
  usual('costFactor', 'parts of the usual cost', [0.4, 3]),
];

/** Judgement, around the install and cost figures of the domain brief. */
export const BUILD_TYPE_RANGES: readonly Range[] = [
  inDepth('compostInches.*'),
  inDepth('chipInches.*'),
  usual('prepareHoursPer1000SqFt', 'hours per 1,000 sf', [2, 120]),
  usual('plantHoursPer1000SqFt', 'hours per 1,000 sf', [2, 120]),
  usual('costDollarsPerSqFt', 'dollars per square foot', [1, 60]),
];

/** Judgement, around the care figures of the domain brief and published garden records. */
export const CARE_RANGES: readonly Range[] = [
  usual('firstYearHoursPer1000SqFt', 'hours per 1,000 sf and year', [0.5, 300]),
  usual('matureHoursPer1000SqFt', 'hours per 1,000 sf and year', [0.5, 250]),
  orNone(usual('decayPerYear', 'shares per year', [0.2, 2])),
  orNone(usual('harvestHoursPer1000SqFt', 'hours per 1,000 sf and year', [1, 200])),
  orNone(usual('suppliesDollarsPer1000SqFt', 'dollars per 1,000 sf and year', [5, 2_000])),
  orNone(usual('topDressInches', 'inches', [0.1, 2])),
];

/** Volunteer figures of the domain brief, with room around them. */
export const WORK_DAY_RANGES: readonly Range[] = [
  usual('showRate', 'people present to a sign-up', [0.3, 0.95]),
  usual('effectiveness', 'effective hours to an hour present', [0.2, 1]),
  usual('hoursLong', 'hours', [1, 6]),
  usual('peoplePerLeader', 'people to a leader', [3, 20]),
];

export const POSITION_RANGES: readonly Range[] = [
  usual('leadMonths', 'months', [2, 24]),
  usual('annualDollars', 'dollars a year', [1_000, 200_000]),
];

/** Charges on gifts run from 0 to 8 %. */
export const FUND_RANGES: readonly Range[] = [
  usual('feePercent', 'percent', [0, 10]),
  usual('careSharePercent', 'percent', [0, 60]),
];

export const COMPOST_RANGES: readonly Range[] = [
  orNone(usual('dollarsPerCubicYard', 'dollars per cubic yard', [15, 120])),
  orNone(usual('otherGrade.dollarsPerCubicYard', 'dollars per cubic yard', [5, 120])),
];

export const ESCALATION_RANGES: readonly Range[] = [usual('*', 'percent a year', [0, 10])];

export const BENEFIT_RANGES: readonly Range[] = [usual('discountPercent', 'percent', [0, 10])];
