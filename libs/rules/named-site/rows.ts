import { yearIndexOf } from '#domain/calendar.js';
import type { CommitmentRows } from '../test-rows.js';
import { countTerms } from '../columns.js';
import { slackTerms } from '../slack.js';

/**
 * The named site is prepared in time.
 *
 *     sum over lives l of the site, in time and of its types  of  x[l]  +  short  >=  1
 */
export const addNamedSiteRows: CommitmentRows<'named-site'> = (draft, columns, { test, slack }) => {
  const by = yearIndexOf(columns.campus.calendar, test.by);
  const label = `named-site ${test.site}`;
  const short = slackTerms(draft, slack, { label, upper: 1 });
  const kept = countTerms(
    columns,
    (l) =>
      l.site === test.site &&
      l.yearIndex <= by &&
      (test.buildTypes === 'any' || test.buildTypes.includes(l.buildType)),
  );
  draft.addRow({ label, terms: [...kept, ...short], atLeast: 1 });
  return short;
};
