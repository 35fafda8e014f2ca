import type { ModelDraft } from '#mip/model-draft.js';
import { bySite, type Columns } from '../columns.js';

/**
 * A site has at most one life.
 *
 *     sum over lives l of s  of  x[l]  <=  1     for each site s
 */
export function addBuiltOnceRows(draft: ModelDraft, columns: Columns): void {
  for (const [site, lives] of bySite(columns)) {
    draft.addRow({
      label: `built-once ${site}`,
      terms: lives.map(({ variable }) => ({ variable, coefficient: 1 })),
      atMost: 1,
    });
  }
}
