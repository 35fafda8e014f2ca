import type { ReactNode } from 'react';
import { strings } from '../../strings.data.js';
import type { Filter, SiteRow } from './site-rows.js';

const words = strings.sites;

interface SiteFilterProps {
  readonly rows: readonly SiteRow[];
  readonly filter: Filter;
  readonly onFilter: (filter: Filter) => void;
}

const shows = ['all', 'planned', 'not planned', 'open', 'planted'] as const;

/** Which sites the list shows. */
export function SiteFilter({ rows, filter, onFilter }: SiteFilterProps): ReactNode {
  const zones = [...new Set(rows.map(({ zone }) => zone))].sort();
  return (
    <div className="filters" role="search" aria-label={words.filter}>
      <label className="field">
        {words.find}
        <input
          type="search"
          value={filter.text}
          onChange={(event) => onFilter({ ...filter, text: event.target.value })}
        />
      </label>
      <label className="field">
        {words.show}
        <select
          value={filter.show}
          onChange={(event) => onFilter({ ...filter, show: event.target.value as Filter['show'] })}
        >
          {shows.map((show) => (
            <option key={show} value={show}>
              {words.shows[show]}
            </option>
          ))}
        </select>
      </label>
      <label className="field">
        {words.zone}
        <select
          value={filter.zone}
          onChange={(event) => onFilter({ ...filter, zone: event.target.value })}
        >
          <option value="">{words.everyZone}</option>
          {zones.map((zone) => (
            <option key={zone}>{zone}</option>
          ))}
        </select>
      </label>
    </div>
  );
}
