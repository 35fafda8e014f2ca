import type { CommitmentRows } from '../test-rows.js';
import { countTerms } from '../columns.js';
import { finishedIn, standsThrough } from '../counting.js';
import { slackTerms } from '../slack.js';

/**
 * The whole of the named site is prepared in time.
 *
 *     sum over lives l of the site, in time and of its types  of  x[l]  +  short  >=  1
 */
export const addNamedSiteRows: CommitmentRows<'named-site'> = (draft, columns, { test, slack }) => {
  const label = `named-site ${test.site}`;
  const short = slackTerms(draft, slack, { label, upper: 1 });
  const kept = countTerms(
    columns,
    (l) =>
      l.site === test.site &&
      finishedIn(l.placement) <= test.by &&
      (test.returnedCounts || standsThrough(columns.campus, l.placement)) &&
      (test.buildTypes === 'any' || test.buildTypes.includes(l.buildType)),
  );
  draft.addRow({ label, terms: [...kept, ...short], atLeast: 1 });
  return short;
};
