import type { ReactNode } from 'react';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { ended } from '../format/ended.js';
import { DataTable, type Column } from '../parts/data-table.js';
import { Section } from '../parts/section.js';
import { strings } from '../strings.data.js';

const words = strings.unknowns;

const columns: readonly Column[] = [
  { head: words.site, kind: 'name' },
  { head: words.what, kind: 'words' },
  { head: words.clearedBy, kind: 'words' },
  { head: words.consequence, kind: 'words' },
];

/** What to find out, and who can clear it. */
export function Unknowns({ overview }: { readonly overview: PlanOverview }): ReactNode {
  const rows = overview.unknowns.map((unknown) => ({
    key: `${unknown.site} ${unknown.what}`,
    cells: [
      [unknown.site, unknown.name].filter(Boolean).join(' ') || words.ofCampus,
      unknown.what,
      ended(unknown.clearedBy),
      unknown.consequence,
    ],
  }));
  return (
    <Section id="unknowns" heading={strings.sections.unknowns}>
      {rows.length === 0 ? (
        <p>{words.none}</p>
      ) : (
        <DataTable caption={words.caption} columns={columns} rows={rows} />
      )}
    </Section>
  );
}
