import type { ReactNode } from 'react';
import type { YearSite } from '#explain/overview/plan-overview.js';
import type { StripDrawing } from './strip-drawing.js';
import { MARK } from './strip-layout.js';
import type { StripYear } from './strip-years.js';
import type { DragControl, MarkHandlers } from './use-site-drag.js';

interface StripMarksProps extends StripDrawing {
  /** Left out: the marks stay where they are. */
  readonly handlersOf?: DragControl['handlersOf'];
}

/** One mark for each site built, an outline for sites that works block, a flag for hires. */
export function StripMarks(props: StripMarksProps): ReactNode {
  const { years, columns, layout, id, handlersOf } = props;
  return (
    <g>
      {years.map((year, index) => {
        const middle = columns.middle(index);
        return (
          <g key={year.row.year}>
            {year.row.sites.map((site, place) => (
              <SiteMark
                key={site.site}
                site={site}
                middle={middle}
                bottom={layout.baseline - 4 - place * layout.siteStep}
                hatch={`url(#${id}-dense)`}
                handlers={handlersOf?.(site, index)}
              />
            ))}
            <BlockedMark year={year} middle={middle} top={layout.blockedTop} />
            <HireMark year={year} middle={middle} top={layout.hiresTop} />
          </g>
        );
      })}
    </g>
  );
}

interface SiteMarkProps {
  readonly site: YearSite;
  readonly middle: number;
  readonly bottom: number;
  readonly hatch: string;
  readonly handlers: MarkHandlers | undefined;
}

function SiteMark({ site, middle, bottom, hatch, handlers }: SiteMarkProps): ReactNode {
  const side = site.countsTowardsPromise ? MARK : MARK * 0.6;
  return (
    <rect
      className={handlers === undefined ? 'site-mark' : 'site-mark is-movable'}
      x={middle - side / 2}
      y={bottom - side}
      width={side}
      height={side}
      {...(site.needsProposedPosition ? { style: { fill: hatch } } : {})}
      {...handlers}
    >
      <title>{`${site.site} ${site.name}`}</title>
    </rect>
  );
}

interface YearMarkProps {
  readonly year: StripYear;
  readonly middle: number;
  readonly top: number;
}

function BlockedMark({ year, middle, top }: YearMarkProps): ReactNode {
  const count = year.row.blocked.length;
  if (count === 0) return null;
  const side = MARK + 3;
  return (
    <g>
      <rect className="blocked-mark" x={middle - side / 2} y={top} width={side} height={side}>
        <title>{year.row.blocked.join(', ')}</title>
      </rect>
      <text className="figure-count" x={middle} y={top + side / 2 + 4} textAnchor="middle">
        {count}
      </text>
    </g>
  );
}

function HireMark({ year, middle, top }: YearMarkProps): ReactNode {
  if (year.row.hires.length === 0) return null;
  return (
    <path className="hire-mark" d={`M${middle - 5} ${top + 18}v-16l11 4.500l-11 4.500`}>
      <title>{year.row.hires.join(', ')}</title>
    </path>
  );
}
