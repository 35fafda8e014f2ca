import type { ReactNode } from 'react';
import type { PlanOverview, YearRow, YearSite } from '#explain/overview/plan-overview.js';
import { dollars, wholeNumber } from '../format/numbers.js';
import { DataTable, type Column, type TableRow } from '../parts/data-table.js';
import { Section } from '../parts/section.js';
import { strings } from '../strings.data.js';

const words = strings.plan;

const columns: readonly Column[] = [
  { head: words.year, kind: 'head' },
  { head: words.site, kind: 'words' },
  { head: words.zone, kind: 'words' },
  { head: words.type, kind: 'words' },
  { head: words.area, kind: 'number' },
  { head: words.cost, kind: 'number' },
  { head: words.planting, kind: 'text' },
];

/** Every site of every year, and the years that hold none. */
export function PlanByYear({ overview }: { readonly overview: PlanOverview }): ReactNode {
  return (
    <Section id="plan" heading={strings.sections.plan}>
      <DataTable
        caption={words.caption}
        columns={columns}
        rows={overview.years.flatMap(rowsOfYear)}
      />
    </Section>
  );
}

function rowsOfYear(year: YearRow): readonly TableRow[] {
  if (year.sites.length === 0) {
    return [{ key: year.year, cells: [year.year, words.none, '', '', '', '', ''] }];
  }
  return year.sites.map((site) => siteRow(year, site));
}

function siteRow({ year, planting }: YearRow, site: YearSite): TableRow {
  const { low, high } = site.cost;
  return {
    key: `${year} ${site.site}`,
    cells: [
      year,
      `${site.site} ${site.name}`,
      site.zone,
      site.buildType,
      wholeNumber(site.areaSqFt),
      strings.next.costRange(dollars(low), dollars(high)),
      planting,
    ],
  };
}
