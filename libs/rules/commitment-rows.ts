import type { CommitmentTest } from '#domain/commitment.js';
import type { Term } from '#mip/model.js';
import type { ModelDraft } from '#mip/model-draft.js';
import { addAreaRows } from './area/rows.js';
import type { Columns } from './columns.js';
import { addNamedSiteRows } from './named-site/rows.js';
import { addEarlyPositionRows } from './no-new-positions-before/rows.js';
import { addUnservedRows } from './no-unserved-care/rows.js';
import { addOtherTypeRows } from './only-build-types/rows.js';
import type { TestRows } from './test-rows.js';
import { addSitesEachYearRows } from './sites-each-year/rows.js';
import { addZoneRows } from './zone-balance/rows.js';

/** Writes the rows of any promise. */
export function addCommitmentRows(
  draft: ModelDraft,
  columns: Columns,
  { test, ...rest }: TestRows<CommitmentTest>,
): Term[] {
  switch (test.kind) {
    case 'sites-each-year':
      return addSitesEachYearRows(draft, columns, { test, ...rest });
    case 'named-site':
      return addNamedSiteRows(draft, columns, { test, ...rest });
    case 'area':
      return addAreaRows(draft, columns, { test, ...rest });
    case 'no-new-positions-before':
      return addEarlyPositionRows(draft, columns, { test, ...rest });
    case 'no-unserved-care':
      return addUnservedRows(draft, columns, { test, ...rest });
    case 'only-build-types':
      return addOtherTypeRows(draft, columns, { test, ...rest });
    case 'zone-balance':
      return addZoneRows(draft, columns, { test, ...rest });
  }
}
