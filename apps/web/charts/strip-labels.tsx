import type { ReactNode } from 'react';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { strings } from '../strings.data.js';
import type { StripLayout } from './strip-layout.js';
import { BANDS, limitYear } from './strip-years.js';

interface StripLabelsProps {
  readonly overview: PlanOverview;
  readonly layout: StripLayout;
}

/** Names of the strip's rows, beside the scroll box so that they stay in sight. */
export function StripLabels({ overview, layout }: StripLabelsProps): ReactNode {
  const { rows, shortFrom, notShort } = strings.strip;
  return (
    <div className="figure-names" style={{ height: layout.total }} aria-hidden="true">
      <RowName top={layout.baseline - 20} name={rows.sites} />
      <RowName top={layout.blockedTop - 2} name={rows.blocked} />
      {BANDS.map((band) => {
        const year = limitYear(overview, band);
        return (
          <RowName
            key={band}
            top={layout.bandTop[band] - 6}
            name={rows[band]}
            note={year === null ? notShort : shortFrom(year)}
            strong={year !== null}
          />
        );
      })}
      <RowName top={layout.hiresTop} name={rows.hires} />
    </div>
  );
}

interface RowNameProps {
  readonly top: number;
  readonly name: string;
  readonly note?: string;
  readonly strong?: boolean;
}

function RowName({ top, name, note, strong }: RowNameProps): ReactNode {
  return (
    <div className="row-name" style={{ top }}>
      <span>{name}</span>
      {note !== undefined && (
        <span className={strong ? 'row-note is-short' : 'row-note'}>{note}</span>
      )}
    </div>
  );
}
