import { CONVERSIONS } from './conversions.data.js';

/** Units in which a reader is told a value. The program itself reckons in US customary ones. */
export const UNIT_SYSTEMS = ['us', 'metric'] as const;
export type UnitSystem = (typeof UNIT_SYSTEMS)[number];

/** A value with its unit; null: unknown. */
export interface Measure {
  readonly value: number | null;
  readonly unit: string;
}

/** A measure, given in a unit of this program, as a reader of a system is told it. */
export function measureIn(system: UnitSystem, { value, unit }: Measure): Measure {
  if (system === 'us') return { value, unit };
  return { value: value === null ? null : toMetric(value, unit), unit: metricUnit(unit) };
}

/** The metric unit told in place of a unit of this program; the same where it is no customary one. */
export function metricUnit(unit: string): string {
  return conversionOf(unit)?.metric ?? unit;
}

/** A value in a unit of this program as one in `metricUnit(unit)`. */
export function toMetric(value: number, unit: string): number {
  const conversion = conversionOf(unit);
  if (!conversion) return value;
  return (value - (conversion.zero ?? 0)) * conversion.factor;
}

/** The way back: a value in `metricUnit(unit)` as one in `unit`. */
export function fromMetric(value: number, unit: string): number {
  const conversion = conversionOf(unit);
  if (!conversion) return value;
  return value / conversion.factor + (conversion.zero ?? 0);
}

function conversionOf(unit: string) {
  return Object.hasOwn(CONVERSIONS, unit) ? CONVERSIONS[unit] : undefined;
}
