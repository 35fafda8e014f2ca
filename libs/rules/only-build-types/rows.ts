import type { CommitmentRows } from '../test-rows.js';
import { countTerms } from '../columns.js';

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
  const other = countTerms(columns, (l) => !test.buildTypes.includes(l.buildType));
  if (slack === 'allowed') return other;
  draft.addRow({ label: 'only-build-types', terms: other, atMost: 0 });
  return [];
};
