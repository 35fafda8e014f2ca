import { yearIndexOf } from '#domain/calendar.js';
import type { CommitmentRows } from '../test-rows.js';

/**
 * No recurring position starts before the year.
 *
 *     sum over recurring hires h before the year  of  count[h]  <=  0, or the shortfall where it may be missed
 */
export const addEarlyPositionRows: CommitmentRows<'no-new-positions-before'> = (
  draft,
  columns,
  { test, slack },
) => {
  const before = yearIndexOf(columns.campus.calendar, test.year);
  const early = columns.hires
    .filter((h) => h.position.term === 'recurring' && h.yearIndex < before)
    .map(({ variable }) => ({ variable, coefficient: 1 }));
  if (slack === 'allowed') return early;
  draft.addRow({ label: 'no-new-positions-before', terms: early, atMost: 0 });
  return [];
};
