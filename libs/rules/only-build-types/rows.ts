import type { CommitmentRows } from '../test-rows.js';
import { countTerms } from '../columns.js';
import { typesOf } from '../counting.js';

/**
 * Nothing else is built.
 *
 *     sum over lives l of other types  of  x[l]  <=  0, or the shortfall where it may be missed
 */
export const addOtherTypeRows: CommitmentRows<'only-build-types'> = (
  draft,
  columns,
  { test, slack },
) => {
  const other = countTerms(
    columns,
    (l) => !typesOf(columns.campus, l.placement).every((type) => test.buildTypes.includes(type)),
  );
  if (slack === 'allowed') return other;
  draft.addRow({ label: 'only-build-types', terms: other, atMost: 0 });
  return [];
};
