import type { Provenance } from '#domain/component.js';

/** Where a default comes from; a campus replaces it by what it measured. */
export type DefaultBasis = Extract<
  Provenance['basis'],
  'published' | 'common practice' | 'judgement'
>;

/** One coefficient of the planning arithmetic. */
export interface DefaultRow {
  readonly unit: string;
  readonly low: number;
  readonly typical: number;
  readonly high: number;
  /** Values outside (inclusive bounds) are rejected; values outside low to high are warned about. */
  readonly possible: readonly [least: number, most: number];
  readonly basis: DefaultBasis;
  readonly source: string;
  /** Year of the source; of an undated page, the year in which it was read. */
  readonly year: number;
}

type Triple = readonly [low: number, typical: number, high: number];
type Cite = readonly [basis: DefaultBasis, source: string, year: number];

/** Writes a row of the table in one line. */
export function row(
  [unit, [low, typical, high]]: readonly [string, Triple],
  possible: readonly [number, number],
  [basis, source, year]: Cite,
): DefaultRow {
  return { unit, low, typical, high, possible, basis, source, year };
}
