import { yearAt } from '#domain/calendar.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import { groupBy } from '#units/group-by.js';
import type { Term } from '#mip/model.js';
import type { ModelDraft } from '#mip/model-draft.js';
import { onceEach } from '../columns.js';
import { countsIn, standsThrough } from '../counting.js';
import type { CommitmentRows } from '../test-rows.js';

/**
 * Sites that count are prepared in each promised year.
 *
 *     sum over lives l that count in year t  of  x[l]  +  short[t]  >=  count     for each promised year t
 */
export const addSitesEachYearRows: CommitmentRows<'sites-each-year'> = (
  draft,
  columns,
  { test, slack },
) => {
  const { campus } = columns;
  const { calendar } = campus;
  const short: Term[] = [];
  const counting = groupBy(
    columns.lifecycles.filter(
      ({ placement }) => test.returnedCounts || standsThrough(campus, placement),
    ),
    ({ placement, charges }) => countsIn(placement, charges.areaSqFt, test.countsFromSqFt),
  );
  for (let index = 0; index < calendar.horizonYears; index++) {
    const year = yearAt(calendar, index);
    if (year < test.from || year > test.to) continue;
    const counts = onceEach(counting.get(year) ?? []);
    const label = `sites-each-year ${fiscalYearLabel(year)}`;
    const missing = slack === 'allowed' ? [shortTerm(draft, label, test.count)] : [];
    short.push(...missing);
    draft.addRow({ label, terms: [...counts, ...missing], atLeast: test.count });
  }
  return short;
};

function shortTerm(draft: ModelDraft, label: string, upper: number): Term {
  return {
    variable: draft.addVariable({ label: `short ${label}`, kind: 'integer', upper }),
    coefficient: 1,
  };
}
