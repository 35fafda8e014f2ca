import { useId, type ReactNode } from 'react';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { useWidth } from '../parts/use-width.js';
import { strings } from '../strings.data.js';
import { fitColumns } from './columns.js';
import { Patterns } from './patterns.js';
import { StripBands } from './strip-bands.js';
import { StripLabels } from './strip-labels.js';
import { stripLayout } from './strip-layout.js';
import { StripMarks } from './strip-marks.js';
import { firstLimitYear, stripYears } from './strip-years.js';
import { StripAxis, StripLimitLine } from './strip-axis.js';

/** All years on one strip: sites above the line, what they use up below it. */
export function StripFigure({ overview }: { readonly overview: PlanOverview }): ReactNode {
  const id = useId();
  const [box, room] = useWidth<HTMLDivElement>(800);
  const years = stripYears(overview);
  const columns = fitColumns(years.length, room, { least: 20, most: 64 });
  const layout = stripLayout(Math.max(...years.map(({ row }) => row.sites.length), 0));
  const drawing = { years, columns, layout, id };
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
          <StripMarks {...drawing} />
          <StripLimitLine {...drawing} year={firstLimitYear(overview)} />
        </svg>
      </div>
    </div>
  );
}

function description({ years, totals }: PlanOverview): string {
  const missed = years.filter(({ promiseKept }) => promiseKept === false).length;
  return strings.strip.description(years.length, totals.sitesBuilt, missed);
}
