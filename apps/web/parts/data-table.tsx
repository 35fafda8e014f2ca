import { useId, type ReactNode } from 'react';

export interface Column {
  readonly head: string;
  /** `head`: names its row. `number`: set to the right, in tabular figures. `words`: may wrap. */
  readonly kind: 'head' | 'number' | 'text' | 'words';
}

export interface TableRow {
  readonly key: string;
  readonly cells: readonly ReactNode[];
}

interface DataTableProps {
  readonly caption: string;
  readonly columns: readonly Column[];
  readonly rows: readonly TableRow[];
}

/** A table in its own scroll box, so that a narrow screen never scrolls the whole page sideways. */
export function DataTable({ caption, columns, rows }: DataTableProps): ReactNode {
  const captionId = useId();
  return (
    <div className="table-box" role="region" aria-labelledby={captionId} tabIndex={0}>
      <table>
        <caption id={captionId}>{caption}</caption>
        <thead>
          <tr>
            {columns.map(({ head, kind }) => (
              <th key={head} scope="col" className={`is-${kind}`}>
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.key}>
              {columns.map((column, index) => (
                <Cell key={column.head} column={column} content={row.cells[index]} />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Cell({ column, content }: { column: Column; content: ReactNode }): ReactNode {
  const className = `is-${column.kind}`;
  if (column.kind !== 'head') return <td className={className}>{content}</td>;
  return (
    <th scope="row" className={className}>
      {content}
    </th>
  );
}
