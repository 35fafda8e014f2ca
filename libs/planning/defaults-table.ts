import type { DefaultRow } from '#estimating/defaults/row.js';
import { DEFAULTS } from '#estimating/defaults/defaults.data.js';
import { measureIn, type UnitSystem } from '#units/measure.js';

/** One default as a reader is told it. */
export interface DefaultEntry {
  readonly key: string;
  readonly unit: string;
  readonly low: number;
  readonly typical: number;
  readonly high: number;
  readonly provenance: DefaultRow['basis'];
  readonly source: string;
  readonly year: number;
}

export interface DefaultsTable {
  readonly units: UnitSystem;
  /** Rows whose keys begin alike, in the order of the table. */
  readonly groups: readonly {
    readonly group: string;
    readonly defaults: readonly DefaultEntry[];
  }[];
}

/** Every coefficient of the estimating formulas with its provenance, by group. */
export function defaultsTable(units: UnitSystem): DefaultsTable {
  const groups = new Map<string, DefaultEntry[]>();
  for (const [key, row] of Object.entries(DEFAULTS)) {
    const group = key.split('.', 1)[0] ?? key;
    groups.set(group, [...(groups.get(group) ?? []), entryOf(key, row, units)]);
  }
  return { units, groups: [...groups].map(([group, defaults]) => ({ group, defaults })) };
}

function entryOf(key: string, row: DefaultRow, units: UnitSystem): DefaultEntry {
  const { basis, source, year } = row;
  const { unit } = measureIn(units, { value: null, unit: row.unit });
  const told = (value: number) => measureIn(units, { value, unit: row.unit }).value ?? value;
  const { low, typical, high } = row;
  return {
    key,
    unit,
    low: told(low),
    typical: told(typical),
    high: told(high),
    provenance: basis,
    source,
    year,
  };
}
