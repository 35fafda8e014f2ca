import type { ReactNode } from 'react';
import type { LimitRow, PlanOverview } from '#explain/overview/plan-overview.js';
import { capitalized, dollars, wholeNumber } from '../format/numbers.js';
import { DataTable, type Column } from '../parts/data-table.js';
import { Section } from '../parts/section.js';
import { strings } from '../strings.data.js';

const words = strings.limits;

const columns: readonly Column[] = [
  { head: words.resource, kind: 'head' },
  { head: words.when, kind: 'words' },
  { head: words.shortBy, kind: 'number' },
  { head: words.what, kind: 'words' },
];

/** When each resource first runs short without what is only proposed. */
export function Limits({ overview }: { readonly overview: PlanOverview }): ReactNode {
  const rows = overview.limits.map((limit) => ({
    key: limit.resource,
    cells: [
      capitalized(limit.resource),
      limit.label ?? limit.year ?? words.notShort,
      shortBy(limit),
      limit.sentence,
    ],
  }));
  return (
    <Section id="limits" heading={strings.sections.limits}>
      {rows.length === 0 ? (
        <p>{words.none}</p>
      ) : (
        <DataTable caption={words.caption} columns={columns} rows={rows} />
      )}
    </Section>
  );
}

function shortBy({ shortBy: value, unit }: LimitRow): string {
  if (value === null) return '';
  if (unit === words.units.dollars) return dollars(value);
  return `${value < 1 ? words.underOne : wholeNumber(value)} ${unit}`;
}
