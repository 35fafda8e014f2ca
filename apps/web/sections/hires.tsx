import type { ReactNode } from 'react';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { dollars, wholeNumber } from '../format/numbers.js';
import { DataTable, type Column } from '../parts/data-table.js';
import { Section } from '../parts/section.js';
import { strings } from '../strings.data.js';

const words = strings.hires;

const columns: readonly Column[] = [
  { head: words.position, kind: 'name' },
  { head: words.count, kind: 'number' },
  { head: words.askBy, kind: 'text' },
  { head: words.starts, kind: 'text' },
  { head: words.cost, kind: 'number' },
];

/** Positions to ask for, with the month by which to ask. */
export function Hires({ overview }: { readonly overview: PlanOverview }): ReactNode {
  const rows = overview.hires.map((hire) => ({
    key: `${hire.position} ${hire.startsIn}`,
    cells: [
      hire.position,
      wholeNumber(hire.count),
      hire.askBy,
      hire.startsIn,
      words.ofTerm[hire.term](dollars(hire.annualDollars)),
    ],
  }));
  return (
    <Section id="hires" heading={strings.sections.hires}>
      {rows.length === 0 ? (
        <p>{words.none}</p>
      ) : (
        <DataTable caption={words.caption} columns={columns} rows={rows} />
      )}
    </Section>
  );
}
