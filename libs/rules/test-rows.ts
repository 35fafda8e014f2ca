import type { CommitmentTest } from '#domain/commitment.js';
import type { Term } from '#mip/model.js';
import type { ModelDraft } from '#mip/model-draft.js';
import type { Columns } from './columns.js';
import type { UnservedColumn } from './labor/rows.js';
import type { TestOf } from './shortfall.js';

/** A test as rows: kept whole, or with a shortfall that the model may take. */
export interface TestRows<T> {
  readonly test: T;
  readonly slack: 'allowed' | 'none';
  readonly unserved: readonly UnservedColumn[];
}

/** Writes one test and returns the sum that is its shortfall, in the unit of its check. */
export type CommitmentRows<K extends CommitmentTest['kind']> = (
  draft: ModelDraft,
  columns: Columns,
  rows: TestRows<TestOf<K>>,
) => Term[];
