import { seasonInstance } from '#domain/calendar.js';
import type { CommitmentRows } from '../test-rows.js';

/**
 * Care of the promised classes and seasons is served in full.
 *
 *     sum over its seasons i, classes c  of  100 unserved[i, c]  <=  0, or the shortfall (hundredths of an hour)
 */
export const addUnservedRows: CommitmentRows<'no-unserved-care'> = (
  draft,
  columns,
  { test, slack, unserved },
) => {
  const short = unserved
    .filter((u) => {
      const { season } = seasonInstance(columns.campus.calendar, u.season);
      return (
        (test.seasons === 'all' || test.seasons.includes(season.id)) &&
        test.classes.includes(u.taskClass)
      );
    })
    .map(({ variable }) => ({ variable, coefficient: 100 }));
  if (slack === 'allowed') return short;
  draft.addRow({ label: 'no-unserved-care', terms: short, atMost: 0 });
  return [];
};
