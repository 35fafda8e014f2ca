import type { ReactNode } from 'react';
import type { CompostRow, GradeRow } from '#explain/overview/plan-overview.js';
import { wholeNumber } from '../format/numbers.js';
import { DataTable } from '../parts/data-table.js';
import { strings } from '../strings.data.js';

const words = strings.money;

type Parts<Row> = readonly (readonly [keyof Row, string])[];

const both: Parts<Omit<CompostRow, 'label' | 'year' | 'grades'>> = [
  ['made', words.made],
  ['bought', words.bought],
  ['builds', words.builds],
  ['topDress', words.topDress],
  ['givenAway', words.givenAway],
  ['stock', words.stock],
];

const ofGrade: Parts<GradeRow> = [
  ['made', words.made],
  ['bought', words.bought],
  ['used', words.used],
  ['givenAway', words.givenAway],
  ['stock', words.stock],
];

/** Compost made, bought, used and kept, season by season; by grade as well where there are two. */
export function CompostTable({ rows }: { readonly rows: readonly CompostRow[] }): ReactNode {
  const graded = (grade: 'certified' | 'other') =>
    rows.flatMap(({ label, grades }) => (grades ? [{ label, ...grades[grade] }] : []));
  return (
    <details>
      <summary>{words.compostSummary}</summary>
      <SeasonTable caption={words.compostCaption} rows={rows} parts={both} />
      <SeasonTable caption={words.certifiedCaption} rows={graded('certified')} parts={ofGrade} />
      <SeasonTable caption={words.otherCaption} rows={graded('other')} parts={ofGrade} />
    </details>
  );
}

interface SeasonTableProps<Part extends string> {
  readonly caption: string;
  readonly rows: readonly (Readonly<Record<Part, number>> & { readonly label: string })[];
  readonly parts: readonly (readonly [Part, string])[];
}

function SeasonTable<Part extends string>(props: SeasonTableProps<Part>): ReactNode {
  const { caption, rows, parts } = props;
  if (rows.length === 0) return null;
  return (
    <DataTable
      caption={caption}
      columns={[
        { head: words.season, kind: 'head' },
        ...parts.map(([, head]) => ({ head, kind: 'number' }) as const),
      ]}
      rows={rows.map((row) => ({
        key: row.label,
        cells: [row.label, ...parts.map(([part]) => wholeNumber(row[part]))],
      }))}
    />
  );
}
