import type { ModelDraft } from '#mip/model-draft.js';
import { yearIndexOf } from '#domain/calendar.js';
import { bySite, type Columns } from '../columns.js';
import { finishedIn } from '../counting.js';

/**
 * A site that must wait is built only where the other stands long enough.
 *
 *     sum over lives of `after` begun by year t  <=  sum over lives of `before` finished by t - apart    for each year t
 */
export function addPrecedenceRows(draft: ModelDraft, columns: Columns): void {
  const { campus } = columns;
  const lives = bySite(columns);
  const standing = new Set(campus.existing.map((s) => s.id));
  for (const { before, after, yearsApart } of campus.precedence) {
    if (standing.has(before)) continue;
    for (let year = 0; year < campus.calendar.horizonYears; year++) {
      const begun = (lives.get(after) ?? []).filter((l) => l.yearIndex <= year);
      const finished = (lives.get(before) ?? []).filter(
        (l) => yearIndexOf(campus.calendar, finishedIn(l.placement)) <= year - yearsApart,
      );
      draft.addRow({
        label: `precedence ${before} ${after} ${year}`,
        terms: [
          ...begun.map(({ variable }) => ({ variable, coefficient: 1 })),
          ...finished.map(({ variable }) => ({ variable, coefficient: -1 })),
        ],
        atMost: 0,
      });
    }
  }
}
