import type { ModelDraft } from '#mip/model-draft.js';
import { groupBy } from '#units/group-by.js';
import type { Columns } from '../columns.js';

/**
 * No more of a position are held than may be. Hires before the lead time have no column.
 *
 *     recurring:   sum over years t of h[p, t]  <=  most[p]     for each type p
 *     one season:  h[p, t]  <=  most[p]                         by the column's own bound
 */
export function addPositionRows(draft: ModelDraft, columns: Columns): void {
  for (const [id, hires] of groupBy(columns.hires, (hire) => hire.position.id)) {
    const position = hires[0]?.position;
    if (position?.term !== 'recurring') continue;
    draft.addRow({
      label: `positions ${id}`,
      terms: hires.map(({ variable }) => ({ variable, coefficient: 1 })),
      atMost: position.most,
    });
  }
}
