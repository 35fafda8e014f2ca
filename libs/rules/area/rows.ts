import { yearIndexOf } from '#domain/calendar.js';
import type { CommitmentRows } from '../test-rows.js';
import { slackTerms } from '../slack.js';

/**
 * The planted area is reached.
 *
 *     existing + sum over lives l up to the year  of  area[l] x[l]  +  short  >=  area
 */
export const addAreaRows: CommitmentRows<'area'> = (draft, columns, { test, slack }) => {
  const by = yearIndexOf(columns.campus.calendar, test.by);
  const existing = columns.campus.existing.reduce((sum, s) => sum + s.areaSqFt, 0);
  const missing = test.sqFt - existing;
  if (missing <= 0) return [];
  const short = slackTerms(draft, slack, { label: 'area', upper: missing });
  const built = columns.lifecycles
    .filter((l) => l.yearIndex <= by)
    .map((l) => ({ variable: l.variable, coefficient: l.charges.areaSqFt }));
  draft.addRow({ label: 'area', terms: [...built, ...short], atLeast: missing });
  return short;
};
