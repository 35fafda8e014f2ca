import type { ModelDraft } from '#mip/model-draft.js';
import { countTerms, type Columns } from '../columns.js';

/**
 * At most one site of a group is built.
 *
 *     sum over sites s of group g, lives l of s  of  x[l]  <=  1     for each group g
 */
export function addExclusiveGroupRows(draft: ModelDraft, columns: Columns): void {
  for (const group of columns.campus.exclusiveGroups) {
    draft.addRow({
      label: `exclusive-group ${group.id}`,
      terms: countTerms(columns, (l) => group.sites.includes(l.site)),
      atMost: 1,
    });
  }
}
