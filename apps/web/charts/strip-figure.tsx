import { useId, type ReactNode } from 'react';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { useWidth } from '../parts/use-width.js';
import { strings } from '../strings.data.js';
import { fitColumns } from './columns.js';
import { Patterns } from './patterns.js';
import { StripBands } from './strip-bands.js';
import { StripDrag } from './strip-drag.js';
import { StripLabels } from './strip-labels.js';
import { stripLayout } from './strip-layout.js';
import { StripMarks } from './strip-marks.js';
import { firstLimitYear, stripYears } from './strip-years.js';
import { StripAxis, StripLimitLine } from './strip-axis.js';
import { useSiteDrag } from './use-site-drag.js';

interface StripFigureProps {
  readonly overview: PlanOverview;
  /** Told which site was dragged to which year, by its place; left out: sites stay where they are. */
  readonly onMove?: (siteId: string, year: number) => void;
}

/** All years on one strip: sites above the line, what they use up below it. */
export function StripFigure({ overview, onMove }: StripFigureProps): ReactNode {
  const id = useId();
  const [box, room] = useWidth<HTMLDivElement>(800);
  const years = stripYears(overview);
  const columns = fitColumns(years.length, room, { least: 20, most: 64 });
  const layout = stripLayout(Math.max(...years.map(({ row }) => row.sites.length), 0));
  const drawing = { years, columns, layout, id };
  const { drag, handlersOf } = useSiteDrag({
    columnWidth: columns.width,
    columnCount: columns.count,
    onDrop: (site, year) => onMove?.(site, year),
  });
  return (
    <div className="figure-frame">
      <StripLabels overview={overview} layout={layout} />
      <div
        className="figure-box"
        ref={box}
        role="region"
        aria-label={strings.strip.title}
        tabIndex={0}
      >
        <svg
          role="img"
          aria-labelledby={`${id}-title ${id}-description`}
          width={columns.total}
          height={layout.total}
        >
          <title id={`${id}-title`}>{strings.strip.title}</title>
          <desc id={`${id}-description`}>{description(overview)}</desc>
          <Patterns id={id} />
          <StripBands {...drawing} />
          <StripAxis {...drawing} />
          <StripMarks {...drawing} {...(onMove === undefined ? {} : { handlersOf })} />
          <StripLimitLine {...drawing} year={firstLimitYear(overview)} />
          {drag !== null && <StripDrag {...drawing} drag={drag} />}
        </svg>
      </div>
    </div>
  );
}

function description({ years, totals }: PlanOverview): string {
  const missed = years.filter(({ promiseKept }) => promiseKept === false).length;
  return strings.strip.description(years.length, totals.sitesBuilt, missed);
}
