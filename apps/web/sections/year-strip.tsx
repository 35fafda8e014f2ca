import { useId, type ReactNode } from 'react';
import type { PlanOverview, YearSite } from '#explain/overview/plan-overview.js';
import { Legend, stripKey } from '../charts/legend.js';
import { StripFigure } from '../charts/strip-figure.js';
import { BANDS, stripYears, type StripYear } from '../charts/strip-years.js';
import { wholeNumber, wholePercent } from '../format/numbers.js';
import { DataTable, type Column, type TableRow } from '../parts/data-table.js';
import { Section } from '../parts/section.js';
import { strings } from '../strings.data.js';

const words = strings.strip;

/** Land is counted in sites, not in shares. */
const shareBands = BANDS.filter((band) => band !== 'sitesUsed');

const columns: readonly Column[] = [
  { head: words.year, kind: 'head' },
  { head: words.rows.sites, kind: 'words' },
  { head: words.promise, kind: 'text' },
  { head: words.rows.blocked, kind: 'words' },
  ...shareBands.map(
    (band) => ({ head: words.usedHead(words.rows[band]), kind: 'number' }) as const,
  ),
  { head: words.sitesLeft, kind: 'number' },
  { head: words.rows.hires, kind: 'words' },
];

interface YearStripProps {
  readonly overview: PlanOverview;
  /** Told which site was dragged to which year, by its place; null: not now. */
  readonly onMove: ((siteId: string, year: number) => void) | null;
}

/** All years at a glance, with the same as a table. */
export function YearStrip({ overview, onMove }: YearStripProps): ReactNode {
  const id = useId();
  return (
    <Section id="strip" heading={strings.sections.strip}>
      <figure>
        <StripFigure overview={overview} {...(onMove === null ? {} : { onMove })} />
        <figcaption>
          <Legend id={id} items={stripKey(id)} />
        </figcaption>
      </figure>
      {overview.totals.sitesBuilt > 0 && <p className="quiet no-print">{words.drag}</p>}
      <details>
        <summary>{words.tableSummary}</summary>
        <DataTable
          caption={words.caption}
          columns={columns}
          rows={stripYears(overview).map(tableRow)}
        />
      </details>
    </Section>
  );
}

function tableRow({ row, used }: StripYear): TableRow {
  return {
    key: row.year,
    cells: [
      row.year,
      row.sites.length === 0 ? words.none : row.sites.map(siteInWords).join('; '),
      promiseInWords(row.promiseKept),
      row.blocked.length === 0 ? words.nothing : row.blocked.join(', '),
      ...shareBands.map((band) => {
        const share = used[band];
        return share === null ? words.unknown : wholePercent(share);
      }),
      wholeNumber(row.sitesLeft),
      row.hires.length === 0 ? words.nothing : row.hires.join(', '),
    ],
  };
}

function siteInWords(site: YearSite): string {
  const notes = [
    ...(site.needsProposedPosition ? [words.onProposed] : []),
    ...(site.countsTowardsPromise ? [] : [words.notCounted]),
  ];
  const name = `${site.site} ${site.name}`;
  return notes.length === 0 ? name : `${name} (${notes.join(', ')})`;
}

function promiseInWords(kept: boolean | null): string {
  if (kept === null) return words.noPromise;
  return kept ? words.kept : words.missedInTable;
}
