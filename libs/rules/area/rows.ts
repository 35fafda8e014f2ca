import type { CommitmentRows } from '../test-rows.js';
import { preparedBy, standsThrough } from '../counting.js';
import { slackTerms } from '../slack.js';

/**
 * The planted area is reached.
 *
 *     existing + sum over lives l that stand  of  area prepared by the year[l] x[l]  +  short  >=  area
 */
export const addAreaRows: CommitmentRows<'area'> = (draft, columns, { test, slack }) => {
  const { campus } = columns;
  const existing = campus.existing.reduce((sum, s) => sum + s.areaSqFt, 0);
  const missing = test.sqFt - existing;
  if (missing <= 0) return [];
  const short = slackTerms(draft, slack, { label: 'area', upper: missing });
  const built = columns.lifecycles
    .filter(({ placement }) => test.returnedCounts || standsThrough(campus, placement, test.by))
    .map(({ variable, placement, charges }) => ({
      variable,
      coefficient: preparedBy(placement, charges.areaSqFt, test.by),
    }))
    .filter(({ coefficient }) => coefficient > 0);
  draft.addRow({ label: 'area', terms: [...built, ...short], atLeast: missing });
  return short;
};
