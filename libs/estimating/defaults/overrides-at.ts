import type { Campus } from '#domain/campus.js';
import type { MeasuredValue } from '#domain/measured.js';
import type { Site } from '#domain/site.js';
import { fromMetric, metricUnit } from '#units/measure.js';
import type { Measured, Overrides } from './coefficients.js';
import { DEFAULTS, type DefaultKey } from './defaults.data.js';

/** Whether a default of this name is there to be replaced. */
export function isDefaultKey(name: string): name is DefaultKey {
  return Object.hasOwn(DEFAULTS, name);
}

/**
 * Whether a value of this unit can be taken in place of a default: its own unit, or the metric one
 * that is told in its place.
 */
export function isUnitOf(key: DefaultKey, unit: string): boolean {
  return unit === DEFAULTS[key].unit || unit === metricUnit(DEFAULTS[key].unit);
}

/**
 * Values that replace defaults at a site: those measured there go before those of the whole campus,
 * and a later one of a list before an earlier one. Without a site: those of the whole campus.
 */
export function overridesAt(campus: Pick<Campus, 'overrides'>, site?: Site): Overrides {
  const values = [...(campus.overrides ?? []), ...(site?.overrides ?? [])];
  return Object.fromEntries(
    values.flatMap((value) => {
      const { coefficient } = value;
      return isDefaultKey(coefficient) ? [[coefficient, measured(coefficient, value)]] : [];
    }),
  );
}

/** A measured value in the unit of the default that it replaces. */
export function measured(key: DefaultKey, { value, unit, source, date }: MeasuredValue): Measured {
  const own = DEFAULTS[key].unit;
  return {
    value: unit === own ? value : fromMetric(value, own),
    basis: 'measured',
    source: `${source} (${date})`,
  };
}
