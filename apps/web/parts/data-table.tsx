import { useId, type ReactNode } from 'react';

export interface Column {
  readonly head: string;
  /**
   * `head` and `name` name their row, a name may wrap; `number` is set to the right; `text` stays on
   * one line; `words` may wrap.
   */
  readonly kind: 'head' | 'name' | 'number' | 'text' | 'words';
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
        <caption>
          <span id={captionId}>{caption}</span>
        </caption>
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
  const namesRow = column.kind === 'head' || column.kind === 'name';
  if (!namesRow) return <td className={className}>{content}</td>;
  return (
    <th scope="row" className={className}>
      {content}
    </th>
  );
}
