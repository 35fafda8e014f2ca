import type { ReactNode } from 'react';
import type { CompostRow, GradeRow } from '#explain/overview/plan-overview.js';
import { wholeNumber } from '../format/numbers.js';
import { DataTable } from '../parts/data-table.js';
import { strings } from '../strings.data.js';

const words = strings.compost;

const parts = ['made', 'bought', 'used', 'givenAway', 'stock'] as const;

/** The compost of each grade, season by season; nothing where there is one grade alone. */
export function CompostByGrade({ rows }: { readonly rows: readonly CompostRow[] }): ReactNode {
  const graded = (grade: 'certified' | 'other') =>
    rows.flatMap(({ label, grades }) => (grades ? [{ label, ...grades[grade] }] : []));
  if (rows.every(({ grades }) => grades === null)) return null;
  return (
    <details>
      <summary>{words.gradesSummary}</summary>
      <GradeTable caption={words.certifiedCaption} rows={graded('certified')} />
      <GradeTable caption={words.otherCaption} rows={graded('other')} />
    </details>
  );
}

interface GradeTableProps {
  readonly caption: string;
  readonly rows: readonly (GradeRow & { readonly label: string })[];
}

function GradeTable({ caption, rows }: GradeTableProps): ReactNode {
  return (
    <DataTable
      caption={caption}
      columns={[
        { head: words.season, kind: 'head' },
        ...parts.map((part) => ({ head: words[part], kind: 'number' }) as const),
      ]}
      rows={rows.map((row) => ({
        key: row.label,
        cells: [row.label, ...parts.map((part) => wholeNumber(row[part]))],
      }))}
    />
  );
}
