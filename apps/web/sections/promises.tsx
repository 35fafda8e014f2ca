import type { ReactNode } from 'react';
import type { PlanOverview, PromiseRow } from '#explain/overview/plan-overview.js';
import { capitalized } from '../format/numbers.js';
import { DataTable, type Column } from '../parts/data-table.js';
import { Section } from '../parts/section.js';
import { strings } from '../strings.data.js';

const words = strings.promises;

const columns: readonly Column[] = [
  { head: words.name, kind: 'name' },
  { head: words.strength, kind: 'text' },
  { head: words.status, kind: 'words' },
  { head: words.keptUntil, kind: 'text' },
  { head: words.missed, kind: 'words' },
];

/** What was promised at which strength, and how far the plan keeps it. */
export function Promises({ overview }: { readonly overview: PlanOverview }): ReactNode {
  const rows = overview.promises.map((promise) => ({
    key: promise.id,
    cells: [
      promise.name,
      promise.strength,
      <StatusInWords key="status" promise={promise} />,
      keptUntil(promise),
      missedIn(promise),
    ],
  }));
  return (
    <Section id="promises" heading={strings.sections.promises}>
      {rows.length === 0 ? (
        <p>{words.none}</p>
      ) : (
        <DataTable caption={words.caption} columns={columns} rows={rows} />
      )}
    </Section>
  );
}

function keptUntil({ keptUntil: year, missedYears }: PromiseRow): string {
  return year ?? (missedYears.length === 0 ? '' : words.missedAtOnce);
}

/** Nothing for a promise of no years: whether it is missed stands beside it. */
function missedIn({ keptUntil: year, missedYears }: PromiseRow): string {
  if (missedYears.length > 0) return missedYears.join(', ');
  return year === null ? '' : words.neverMissed;
}

function StatusInWords({ promise }: { readonly promise: PromiseRow }): ReactNode {
  return (
    <>
      <strong>{capitalized(promise.status)}.</strong> {promise.sentence}
    </>
  );
}
