import type { Provenance } from '#domain/component.js';
import { type ExplainedNode } from '../explained.js';
import { type Finding, type InputRange, rangeFindings } from '../finding.js';
import { DEFAULTS, type DefaultKey } from './defaults.data.js';
import type { DefaultRow } from './row.js';

/** A value that the campus measured or keeps on record, which goes before the default. */
export interface Measured {
  readonly value: number;
  readonly basis: Provenance['basis'];
  readonly source: string;
}

/** Values that replace defaults, by key. */
export type Overrides = Readonly<Partial<Record<DefaultKey, Measured>>>;

export function defaultRow(key: DefaultKey): DefaultRow {
  return DEFAULTS[key];
}

/** The typical default. */
export function typical(key: DefaultKey): number {
  return DEFAULTS[key].typical;
}

/** The value to plan with: the campus's own where it has one, else the typical default. */
export function coefficient(key: DefaultKey, overrides: Overrides = {}): number {
  return overrides[key]?.value ?? DEFAULTS[key].typical;
}

/** The same value as a node that names its basis and source. */
export function coefficientNode(key: DefaultKey, overrides: Overrides = {}): ExplainedNode {
  const row = DEFAULTS[key];
  const own = overrides[key];
  return {
    name: key,
    value: own?.value ?? row.typical,
    unit: row.unit,
    formula: own ? 'campus value' : `default, ${row.low} to ${row.high}`,
    source: own ? `${own.basis}: ${own.source}` : `${row.basis}: ${row.source} (${row.year})`,
    inputs: [],
  };
}

/** Judges every override against its row: warned outside low to high, rejected outside what is possible. */
export function overrideFindings(overrides: Overrides): Finding[] {
  return (Object.keys(overrides) as DefaultKey[]).flatMap((key) => {
    const row: DefaultRow = DEFAULTS[key];
    const own = overrides[key];
    if (!own) return [];
    const remedy = `Check the value and its unit (${row.unit}); the default is ${row.typical}.`;
    const { unit, low, high, possible } = row;
    const range: InputRange = { unit, plausible: [low, high], possible, remedy };
    return rangeFindings(key, own.value, range);
  });
}
