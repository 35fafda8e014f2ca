import type { ReactNode } from 'react';
import type { CampusFile } from '../../api.js';
import { strings } from '../../strings.data.js';
import { shortYear } from './years.js';

const words = strings.change;

interface PlacedByHandProps {
  readonly file: CampusFile;
  readonly onFree: (site: string) => void;
}

/** What people have fixed or barred so far, each with its reason. */
export function PlacedByHand({ file, onFree }: PlacedByHandProps): ReactNode {
  if (file.handPlacements.length === 0) return <p className="quiet">{words.nonePlaced}</p>;
  return (
    <>
      <h3>{words.placed}</h3>
      <ul className="placed">
        {file.handPlacements.map((row) => (
          <li key={`${row.site} ${row.kind} ${row.year ?? ''}`}>
            <strong>{row.site}</strong>{' '}
            {words.placedAs(row.kind, row.year === undefined ? null : shortYear(row.year))}{' '}
            {row.reason}{' '}
            <button
              type="button"
              className="small"
              aria-label={words.freeSite(row.site)}
              onClick={() => onFree(row.site)}
            >
              {words.free}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}
