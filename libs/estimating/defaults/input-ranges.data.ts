import type { InputRange } from '../finding.js';

const area = 'Give the area in square feet, not in acres or square meters.';
const depth = 'Give the depth in inches, not in feet or centimeters.';

/** What a person may type: plausible values pass, unusual ones are warned about, impossible ones rejected. */
export const INPUT_RANGES = {
  areaSqFt: { unit: 'sf', plausible: [500, 60_000], possible: [1, 5_000_000], remedy: area },
  depthInches: { unit: 'in', plausible: [0.5, 12], possible: [0, 36], remedy: depth },
  haulFeet: {
    unit: 'ft',
    plausible: [0, 600],
    possible: [0, 10_000],
    remedy: 'Give feet from the pile to the bed.',
  },
  slopePercent: {
    unit: '%',
    plausible: [0, 25],
    possible: [0, 200],
    remedy: 'Give rise over run in percent.',
  },
  ph: {
    unit: 'pH',
    plausible: [4.5, 8.5],
    possible: [2, 12],
    remedy: 'Check the laboratory report.',
  },
  organicMatterPercent: {
    unit: '%',
    plausible: [1, 10],
    possible: [0, 100],
    remedy: 'Give percent by weight.',
  },
  leadMgPerKg: {
    unit: 'mg/kg',
    plausible: [5, 2_000],
    possible: [0, 200_000],
    remedy: 'Give mg/kg (the same as ppm), not percent.',
  },
  penetrometerPsi: {
    unit: 'psi',
    plausible: [100, 500],
    possible: [0, 2_000],
    remedy: 'Give psi at 6 inches.',
  },
  infiltrationInchesPerHour: {
    unit: 'in/h',
    plausible: [0.05, 6],
    possible: [0, 60],
    remedy: 'Give inches per hour, not centimeters.',
  },
  sunHours: {
    unit: 'h/day',
    plausible: [2, 12],
    possible: [0, 24],
    remedy: 'Give mean daily hours, May to September.',
  },
  walkersPerDay: {
    unit: 'people/day',
    plausible: [0, 10_000],
    possible: [0, 200_000],
    remedy: 'Give people counted in a day.',
  },
  trunkInches: {
    unit: 'in',
    plausible: [2, 60],
    possible: [0.5, 300],
    remedy: 'Give the diameter in inches at 4.5 ft.',
  },
  rainInches: {
    unit: 'in',
    plausible: [0, 10],
    possible: [0, 80],
    remedy: 'Give inches of rain, not millimeters.',
  },
  signUps: {
    unit: 'people',
    plausible: [0, 200],
    possible: [0, 5_000],
    remedy: 'Give people signed up for one day.',
  },
} as const satisfies Record<string, InputRange>;

export type InputField = keyof typeof INPUT_RANGES;
