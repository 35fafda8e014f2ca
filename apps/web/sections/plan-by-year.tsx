import type { ReactNode } from 'react';
import type { PlanOverview, YearRow, YearSite } from '#explain/overview/plan-overview.js';
import { dollars, wholeNumber } from '../format/numbers.js';
import { DataTable, type Column, type TableRow } from '../parts/data-table.js';
import { ViewLink } from '../parts/view-link.js';
import { Section } from '../parts/section.js';
import { strings } from '../strings.data.js';

const words = strings.plan;

const columns: readonly Column[] = [
  { head: words.year, kind: 'head' },
  { head: words.site, kind: 'name' },
  { head: words.zone, kind: 'words' },
  { head: words.type, kind: 'words' },
  { head: words.area, kind: 'number' },
  { head: words.cost, kind: 'number' },
  { head: words.planting, kind: 'text' },
  { head: words.change, kind: 'plain' },
];

/** Every site of every year, and the years that hold none. */
interface PlanByYearProps {
  readonly overview: PlanOverview;
  /** Told which site a reader wants to move or bar. */
  readonly onMove: (siteId: string) => void;
}

export function PlanByYear({ overview, onMove }: PlanByYearProps): ReactNode {
  return (
    <Section id="plan" heading={strings.sections.plan}>
      <DataTable
        caption={words.caption}
        columns={columns}
        rows={overview.years.flatMap((year) => rowsOfYear(year, onMove))}
      />
    </Section>
  );
}

type OnMove = PlanByYearProps['onMove'];

function rowsOfYear(year: YearRow, onMove: OnMove): readonly TableRow[] {
  if (year.sites.length === 0) {
    return [{ key: year.year, cells: [year.year, <None key="none" />, '', '', '', '', '', ''] }];
  }
  return year.sites.map((site) => ({
    key: `${year.year} ${site.site}`,
    cells: [...siteCells(year, site), <MoveButton key="move" site={site} onMove={onMove} />],
  }));
}

function None(): ReactNode {
  return <span className="quiet">{words.none}</span>;
}

function siteCells({ year, planting }: YearRow, site: YearSite): readonly ReactNode[] {
  const { low, high } = site.cost;
  return [
    year,
    <ViewLink key="site" to={{ view: 'sites', siteId: site.site }}>
      {site.site} {site.name}
    </ViewLink>,
    site.zone,
    site.buildType,
    wholeNumber(site.areaSqFt),
    strings.next.costRange(dollars(low), dollars(high)),
    planting,
  ];
}

interface MoveButtonProps {
  readonly site: YearSite;
  readonly onMove: OnMove;
}

function MoveButton({ site, onMove }: MoveButtonProps): ReactNode {
  return (
    <button
      type="button"
      className="small"
      aria-label={words.moveSite(site.site)}
      onClick={() => onMove(site.site)}
    >
      {words.move}
    </button>
  );
}
