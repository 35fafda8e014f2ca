import type { PlanOverview } from '#explain/overview/plan-overview.js';
import type { Block } from '../document/plan-document.js';
import { row, table, textColumn } from '../document/table.js';

/** How the numbers came about, and where their coefficients come from. */
export function sourceBlocks({ sources }: PlanOverview): readonly Block[] {
  return [
    table({
      caption: 'Where the numbers come from; the estimate of a site opens each to its full source',
      density: 'dense',
      columns: [
        textColumn('Number', 1.4),
        textColumn('How it is worked out', 7.2),
        textColumn('Coefficients', 2.6),
      ],
      rows: sources.map(({ number, how, source }) => row(number, how, source)),
    }),
  ];
}
