/**
 * What the conversions rest on; each is exact by definition (NIST Special Publication 811, 2008,
 * appendix B; from memory, not read again).
 */
/** Meters in an international foot. */
const FOOT = 0.3048;
/** Meters in an inch, a twelfth of a foot. */
const INCH = 0.0254;
/** Kilograms in an avoirdupois pound. */
const POUND = 0.45359237;
/** Liters in a US gallon: 231 cubic inches. */
const GALLON = 231 * 0.016387064;
/** Meters per second squared: standard gravity, which makes a pound of mass a pound of force. */
const GRAVITY = 9.80665;

const SQUARE_FOOT = FOOT ** 2;
const CUBIC_FOOT = FOOT ** 3;
const CUBIC_YARD = 27 * CUBIC_FOOT;

/** How a value in a unit of this program is told in metric: `metric = (value - zero) x factor`. */
export interface Conversion {
  readonly metric: string;
  readonly factor: number;
  /** Value that is 0 in metric; left out where it is 0 in both. */
  readonly zero?: number;
}

/** Every US customary unit that the program uses. A unit that is not here is the same in both. */
export const CONVERSIONS: Readonly<Record<string, Conversion>> = {
  ft: { metric: 'm', factor: FOOT },
  in: { metric: 'cm', factor: INCH * 100 },
  'in/yr': { metric: 'cm/yr', factor: INCH * 100 },
  'ft/in': { metric: 'm/cm', factor: FOOT / (INCH * 100) },
  'ft/person-h': { metric: 'm/person-h', factor: FOOT },
  'share/ft': { metric: 'share/m', factor: 1 / FOOT },
  '$/ft': { metric: '$/m', factor: 1 / FOOT },
  sf: { metric: 'm²', factor: SQUARE_FOOT },
  'sf/person-h': { metric: 'm²/person-h', factor: SQUARE_FOOT },
  '$/sf': { metric: '$/m²', factor: 1 / SQUARE_FOOT },
  '$/path sf': { metric: '$/path m²', factor: 1 / SQUARE_FOOT },
  'lb/sf': { metric: 'kg/m²', factor: POUND / SQUARE_FOOT },
  'h/1,000 sf': { metric: 'h/100 m²', factor: 100 / (1000 * SQUARE_FOOT) },
  'h/1,000 sf-yr': { metric: 'h/100 m²-yr', factor: 100 / (1000 * SQUARE_FOOT) },
  'cu ft': { metric: 'm³', factor: CUBIC_FOOT },
  'cu yd': { metric: 'm³', factor: CUBIC_YARD },
  'cu yd/yr': { metric: 'm³/yr', factor: CUBIC_YARD },
  'cu yd/person-h': { metric: 'm³/person-h', factor: CUBIC_YARD },
  '$/cu yd': { metric: '$/m³', factor: 1 / CUBIC_YARD },
  lb: { metric: 'kg', factor: POUND },
  'lb/yr': { metric: 'kg/yr', factor: POUND },
  'lb/h': { metric: 'kg/h', factor: POUND },
  'lb/meal': { metric: 'kg/meal', factor: POUND },
  'lb/cu yd': { metric: 'kg/m³', factor: POUND / CUBIC_YARD },
  gal: { metric: 'L', factor: GALLON },
  'gal/yr': { metric: 'L/yr', factor: GALLON },
  'gal/h': { metric: 'L/h', factor: GALLON },
  'kg CO2/gal': { metric: 'kg CO2/L', factor: 1 / GALLON },
  psi: { metric: 'kPa', factor: (POUND * GRAVITY) / INCH ** 2 / 1000 },
  '°F': { metric: '°C', factor: 5 / 9, zero: 32 },
};
