import type { ReactNode } from 'react';
import type { ImportRow } from '../../api.js';
import { DataTable, type Column } from '../../parts/data-table.js';
import { strings } from '../../strings.data.js';

const words = strings.setUp;

const columns: readonly Column[] = [
  { head: words.importPlace, kind: 'text' },
  { head: words.importRecord, kind: 'name' },
  { head: words.importOutcome, kind: 'text' },
  { head: words.importDetail, kind: 'plain' },
];

/** Each row of an imported file: what it would do, or what to mend. Rows to be mended come first. */
export function ImportRows({ rows }: { readonly rows: readonly ImportRow[] }): ReactNode {
  const told = rows.filter(({ outcome }) => outcome !== 'unchanged');
  const first = told.filter(({ outcome }) => outcome === 'rejected');
  const others = told.filter(({ outcome }) => outcome !== 'rejected');
  return (
    <>
      {told.length > 0 && (
        <DataTable
          caption={words.importCaption}
          columns={columns}
          rows={[...first, ...others].map((row, index) => ({
            key: `${row.place} ${index}`,
            cells: [
              row.place,
              row.record,
              words.outcomes[row.outcome],
              <Details key="details" row={row} />,
            ],
          }))}
        />
      )}
      {told.length < rows.length && (
        <p className="quiet">{words.unchangedRows(rows.length - told.length)}</p>
      )}
    </>
  );
}

function Details({ row: { changes, problems } }: { readonly row: ImportRow }): ReactNode {
  return (
    <ul className="import-details">
      {problems.map((problem) => (
        <li key={`${problem.field} ${problem.problem}`}>
          <strong>{problem.field === '' ? problem.record : problem.field}:</strong>{' '}
          {problem.problem} {problem.remedy}
        </li>
      ))}
      {changes.map(({ field, from, to }) => (
        <li key={field}>{words.importChange(field, from, to)}</li>
      ))}
    </ul>
  );
}
