import type { ModelDraft } from '#mip/model-draft.js';
import type { Columns, HireColumn } from '../columns.js';

/**
 * No more of a position are held than may be. Hires before the lead time have no column.
 *
 *     recurring:   sum over years t of h[p, t]  <=  most[p]     for each type p
 *     one season:  h[p, t]  <=  most[p]                         by the column's own bound
 */
export function addPositionRows(draft: ModelDraft, columns: Columns): void {
  const groups = new Map<string, HireColumn[]>();
  for (const hire of columns.hires) {
    groups.set(hire.position.id, [...(groups.get(hire.position.id) ?? []), hire]);
  }
  for (const [id, hires] of groups) {
    const position = hires[0]?.position;
    if (position?.term !== 'recurring') continue;
    draft.addRow({
      label: `positions ${id}`,
      terms: hires.map(({ variable }) => ({ variable, coefficient: 1 })),
      atMost: position.most,
    });
  }
}
