import { useId, type ReactNode } from 'react';

export interface Column {
  readonly head: string;
  /**
   * `head` and `name` name their row, a name may wrap; `number` is set to the right; `text` stays on
   * one line; `words` may wrap; `plain` says by itself what it is, so a list of the rows leaves out
   * the name of its column.
   */
  readonly kind: 'head' | 'name' | 'number' | 'text' | 'words' | 'plain';
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

/**
 * A table in its own scroll box, so that a narrow screen never scrolls the whole page sideways. There
 * a table of words is set as a list of its rows, each cell under the name of its column; one of
 * numbers stays a table, since its columns are read downwards.
 */
export function DataTable({ caption, columns, rows }: DataTableProps): ReactNode {
  const captionId = useId();
  const setting = narrowSetting(columns);
  // A style that makes a list of the rows must not take away what they are to a screen reader.
  const role: RoleOf = (name) => (setting === 'is-stacked' ? { role: name } : {});
  return (
    <div className={`table-box ${setting}`} role="region" aria-labelledby={captionId} tabIndex={0}>
      <table {...role('table')}>
        <caption>
          <span id={captionId}>{caption}</span>
        </caption>
        <thead {...role('rowgroup')}>
          <tr {...role('row')}>
            {columns.map(({ head, kind }) => (
              <th key={head} scope="col" {...role('columnheader')} className={`is-${kind}`}>
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody {...role('rowgroup')}>
          {rows.map((row) => (
            <tr key={row.key} {...role('row')}>
              {columns.map((column, index) => (
                <Cell key={column.head} role={role} column={column} content={row.cells[index]} />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** The attribute that names what an element of a table is, where it must be named. */
type RoleOf = (name: string) => { readonly role?: string };

interface CellProps {
  readonly role: RoleOf;
  readonly column: Column;
  readonly content: ReactNode;
}

function Cell({ role, column: { head, kind }, content }: CellProps): ReactNode {
  const className = `is-${kind}`;
  if (kind === 'head' || kind === 'name') {
    return (
      <th scope="row" {...role('rowheader')} className={className}>
        {content}
      </th>
    );
  }
  return (
    <td {...role('cell')} className={className} data-head={head}>
      {content}
    </td>
  );
}

/** How the table is set where the screen is narrow. */
function narrowSetting(columns: readonly Column[]): 'is-stacked' | 'is-fitted' | 'is-scrolled' {
  const hasWords = columns.some(({ kind }) => kind === 'words' || kind === 'name');
  if (!hasWords) return 'is-scrolled';
  return columns.length > 2 ? 'is-stacked' : 'is-fitted';
}
