import { memo, useDeferredValue, useMemo, useState, type ReactNode } from 'react';
import { counted, dollars, wholeNumber } from '../../format/numbers.js';
import { useGrowing } from '../../parts/use-growing.js';
import { strings } from '../../strings.data.js';
import { SiteFilter } from './site-filter.js';
import { filtered, noFilter, sorted, type Sort, type SortKey, type SiteRow } from './site-rows.js';

const words = strings.sites;

interface SiteListProps {
  readonly rows: readonly SiteRow[];
  readonly selected: string | null;
  readonly onSelect: (siteId: string) => void;
}

/** Rows drawn at first, and more at a time: some screens of the list's box. */
const STEP = 60;

/** Every site as a row: filtered, sorted, and opened by its name. */
export function SiteList({ rows, selected, onSelect }: SiteListProps): ReactNode {
  const [filter, setFilter] = useState(noFilter);
  const [sort, setSort] = useState<Sort>({ key: 'id', order: 'ascending' });
  const settled = useDeferredValue(filter);
  const shown = useMemo(() => sorted(filtered(rows, settled), sort), [rows, settled, sort]);
  const sortBy = (key: SortKey): void =>
    setSort((old) => ({
      key,
      order: old.key === key && old.order === 'ascending' ? 'descending' : 'ascending',
    }));
  return (
    <div className="site-list">
      <SiteFilter rows={rows} filter={filter} onFilter={setFilter} />
      <p role="status" className="quiet">
        {words.shown(counted(shown.length, 'site', 'sites'), wholeNumber(rows.length))}
      </p>
      <div className="table-box tall" role="region" aria-label={words.caption} tabIndex={0}>
        <table>
          <caption className="unseen">{words.caption}</caption>
          <thead>
            <tr>
              {columns.map(({ key, head, kind }) => (
                <th
                  key={key}
                  scope="col"
                  className={`is-${kind}`}
                  aria-sort={sort.key === key ? sort.order : 'none'}
                >
                  <button type="button" className="sorter" onClick={() => sortBy(key)}>
                    {head}
                    <span aria-hidden="true">{sort.key === key ? arrows[sort.order] : ''}</span>
                  </button>
                </th>
              ))}
            </tr>
          </thead>
          <ListRows rows={shown} selected={selected} onSelect={onSelect} />
        </table>
      </div>
    </div>
  );
}

const arrows = { ascending: ' ↑', descending: ' ↓' } as const;

const columns: readonly { key: SortKey; head: string; kind: string }[] = [
  { key: 'id', head: words.site, kind: 'name' },
  { key: 'year', head: words.planned, kind: 'text' },
  { key: 'areaSqFt', head: words.area, kind: 'number' },
  { key: 'cost', head: words.cost, kind: 'number' },
  { key: 'unknownGates', head: words.unknown, kind: 'number' },
];

function ListRows({ rows, selected, onSelect }: SiteListProps): ReactNode {
  const { count, end, showAll } = useGrowing(rows, STEP);
  const left = rows.length - count;
  return (
    <tbody>
      {rows.slice(0, count).map((row) => (
        <ListRow
          key={row.id}
          row={row}
          state={row.id === selected ? 'open' : 'closed'}
          onSelect={onSelect}
        />
      ))}
      {left > 0 && (
        <tr ref={end}>
          <td colSpan={columns.length}>
            <button type="button" className="link" onClick={showAll}>
              {words.showAll(counted(left, 'more site', 'more sites'))}
            </button>
          </td>
        </tr>
      )}
    </tbody>
  );
}

interface ListRowProps {
  readonly row: SiteRow;
  readonly state: 'open' | 'closed';
  readonly onSelect: (siteId: string) => void;
}

const ListRow = memo(function ListRow({ row, state, onSelect }: ListRowProps): ReactNode {
  return (
    <tr className={state === 'open' ? 'is-open' : undefined}>
      <th scope="row" className="is-name">
        <button
          type="button"
          className="link"
          aria-current={state === 'open'}
          onClick={() => onSelect(row.id)}
        >
          {row.id} {row.name}
        </button>
        <small>{row.zone}</small>
      </th>
      <td className="is-text">{plannedInWords(row)}</td>
      <td className="is-number">{wholeNumber(row.areaSqFt)}</td>
      <td className="is-number">{row.cost === null ? '' : dollars(row.cost.likely)}</td>
      <td className="is-number">{wholeNumber(row.unknownGates)}</td>
    </tr>
  );
});

function plannedInWords({ stage, year }: SiteRow): string {
  if (stage === 'planted') return words.plantedIn(year ?? '');
  return year ?? words.notPlanned;
}
