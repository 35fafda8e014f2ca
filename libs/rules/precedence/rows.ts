import type { ModelDraft } from '#mip/model-draft.js';
import { bySite, type Columns } from '../columns.js';

/**
 * A site that must wait is built only where the other stands long enough.
 *
 *     sum over lives of `after` up to year t  <=  sum over lives of `before` up to t - apart    for each year t
 */
export function addPrecedenceRows(draft: ModelDraft, columns: Columns): void {
  const { campus } = columns;
  const lives = bySite(columns);
  const standing = new Set(campus.existing.map((s) => s.id));
  for (const { before, after, yearsApart } of campus.precedence) {
    if (standing.has(before)) continue;
    for (let year = 0; year < campus.calendar.horizonYears; year++) {
      const upTo = (site: string, last: number) =>
        (lives.get(site) ?? []).filter((l) => l.yearIndex <= last);
      draft.addRow({
        label: `precedence ${before} ${after} ${year}`,
        terms: [
          ...upTo(after, year).map(({ variable }) => ({ variable, coefficient: 1 })),
          ...upTo(before, year - yearsApart).map(({ variable }) => ({ variable, coefficient: -1 })),
        ],
        atMost: 0,
      });
    }
  }
}
