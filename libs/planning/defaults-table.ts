import type { Campus } from '#domain/campus.js';
import type { MeasuredValue } from '#domain/measured.js';
import type { DefaultRow } from '#estimating/defaults/row.js';
import { DEFAULTS } from '#estimating/defaults/defaults.data.js';
import { isDefaultKey, measured } from '#estimating/defaults/overrides-at.js';
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
  /** What a campus measured, and plans with in its place. */
  readonly measured: readonly MeasuredEntry[];
}

export interface MeasuredEntry {
  /** `null`: on the whole campus, but for sites that measured it themselves. */
  readonly site: string | null;
  readonly value: number;
  readonly source: string;
}

export interface DefaultsTable {
  readonly units: UnitSystem;
  /** Rows whose keys begin alike, in the order of the table. */
  readonly groups: readonly {
    readonly group: string;
    readonly defaults: readonly DefaultEntry[];
  }[];
}

/**
 * Every coefficient of the estimating formulas with its provenance, by group; of a campus, with what
 * it measured itself.
 */
export function defaultsTable(units: UnitSystem, campus?: Campus): DefaultsTable {
  const measuredHere = campus ? measuredEntries(campus, units) : [];
  const groups = new Map<string, DefaultEntry[]>();
  for (const [key, row] of Object.entries(DEFAULTS)) {
    const group = key.split('.', 1)[0] ?? key;
    groups.set(group, [...(groups.get(group) ?? []), entryOf({ key, row, measuredHere }, units)]);
  }
  return { units, groups: [...groups].map(([group, defaults]) => ({ group, defaults })) };
}

interface Told {
  readonly key: string;
  readonly row: DefaultRow;
  readonly measuredHere: readonly (readonly [key: string, entry: MeasuredEntry])[];
}

function entryOf({ key, row, measuredHere }: Told, units: UnitSystem): DefaultEntry {
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
    measured: measuredHere.filter(([of]) => of === key).map(([, entry]) => entry),
  };
}

function measuredEntries(campus: Campus, units: UnitSystem): Told['measuredHere'] {
  const told = (site: string | null, values: readonly MeasuredValue[] = []) =>
    values.flatMap((own) => {
      if (!isDefaultKey(own.coefficient)) return [];
      const { value, source } = measured(own.coefficient, own);
      const { unit } = DEFAULTS[own.coefficient];
      const entry = { site, value: measureIn(units, { value, unit }).value ?? value, source };
      return [[own.coefficient, entry] as const];
    });
  const sites = [...campus.candidates, ...campus.existing];
  return [
    ...told(null, campus.overrides),
    ...sites.flatMap(({ id, overrides }) => told(id, overrides)),
  ];
}
