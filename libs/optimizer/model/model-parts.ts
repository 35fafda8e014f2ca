import type { ModelDraft } from '#mip/model-draft.js';
import type { Columns } from '#rules/columns.js';
import type { UnservedColumn } from '#rules/labor/rows.js';

/** A model while it is written: the draft, the whole-number columns, the hours that may go unserved. */
export interface ModelParts {
  readonly draft: ModelDraft;
  readonly columns: Columns;
  readonly unserved: readonly UnservedColumn[];
}
