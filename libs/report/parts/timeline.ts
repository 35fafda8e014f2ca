import type { PlanOverview, SeasonRow, YearRow } from '#explain/overview/plan-overview.js';
import { capitalized } from '#units/in-words.js';
import type { Hatch } from '../document/drawing.js';
import type { Figure } from '../document/figure.js';
import type { Block } from '../document/plan-document.js';
import { heading, smallPrint } from '../document/text-blocks.js';
import type { Series } from '../figures/bars.js';
import { seasonCareFigure } from '../figures/season-care-figure.js';
import { stackFigures } from '../figures/stack-figures.js';
import { yearStripFigure } from '../figures/year-strip-figure.js';
import type { SiteMark } from '../figures/year-strip.js';
import { lapsesInWords, paybacksInWords } from './lapses.js';
import { busySeasonRows } from './season.js';
import { bandsOf } from './shares.js';
import { yearTable } from './year-table.js';

/** Height of strip and bars together, so that they stand on one page, and least height of bars; points. */
const BOTH = 505;
const LEAST_BARS = 140;
/** Tallest the bars of a plan of a few years, in points: no taller than wide. */
const FEW_YEARS = { years: 8, bars: 200 };

/** All years on one page: the strip of sites and limits above the care of the busiest season. */
export function timelineBlocks(overview: PlanOverview): readonly Block[] {
  const rows = busySeasonRows(overview);
  const season = rows[0]?.season;
  if (season === undefined) return [];
  const strip = stripOf(overview);
  const height = Math.max(LEAST_BARS, barsRoom(strip, rows.length));
  return [
    heading(1, `All years, and the ${season} care that piles up`),
    smallPrint(
      `A site stands in the year in which it is prepared. Shares of a limit leave out what is only proposed: ${season} hours of those already there, money to spend, compost in the fullest season, sites wanted of those still open. Hours are planning coefficients, mostly judgement: a forecast, not a staffing entitlement.${crowdedInWords(overview.years)}${blockedInWords(overview.years)}${lapsesInWords(overview.lapses)}${paybacksInWords(overview.paybacks)}`,
    ),
    stackFigures(strip, barsOf(season, rows, height), {
      title: `Sites, limits and ${season} hours by fiscal year`,
      table: yearTable(overview, rows),
      mostHeight: BOTH + 14,
    }),
  ];
}

function barsRoom(strip: Figure, years: number): number {
  const room = BOTH - strip.drawing.height;
  return years <= FEW_YEARS.years ? Math.min(room, FEW_YEARS.bars) : room;
}

function stripOf(overview: PlanOverview): Figure {
  return yearStripFigure({
    title: 'Sites and limits',
    years: overview.years.map(({ year }) => year),
    marks: overview.years.flatMap(marksOf),
    bands: bandsOf(overview),
  });
}

/** Sites of a year with a mark each; where there are more, the last mark counts the rest. */
const MOST_MARKS = 8;

function marksOf({ year, sites }: YearRow): SiteMark[] {
  const stateOf = (of: YearRow['sites']) =>
    of.some(({ needsProposedPosition }) => needsProposedPosition) ? 'needs-position' : 'planned';
  const own = sites.length > MOST_MARKS ? sites.slice(0, MOST_MARKS - 1) : sites;
  const rest = sites.slice(own.length);
  return [
    ...own.map((site) => ({ year, label: site.site, state: stateOf([site]) }) as const),
    ...(rest.length > 0 ? [{ year, label: `+${rest.length}`, state: stateOf(rest) } as const] : []),
  ];
}

function crowdedInWords(years: readonly YearRow[]): string {
  return years.some(({ sites }) => sites.length > MOST_MARKS)
    ? ' A mark with a plus counts the other sites of its year.'
    : '';
}

function barsOf(season: string, rows: readonly SeasonRow[], height: number): Figure {
  const series = (label: string, hatch: Hatch, of: (row: SeasonRow) => number): Series => ({
    label,
    hatch,
    values: rows.map(of),
  });
  return seasonCareFigure({
    title: `${capitalized(season)} hours against those already there`,
    years: rows.map(({ year }) => year),
    unit: `${capitalized(season)} hours`,
    supplyLabel: 'Already there',
    height,
    series: [
      series('Mature care', 'light', ({ careByAge }) => careByAge.mature),
      series('Years 2 and 3', 'diagonal', ({ careByAge }) => careByAge.year2 + careByAge.year3),
      series('Year 1', 'dark', ({ careByAge }) => careByAge.year1),
      series('Other work', 'cross', (row) => row.buildHours + row.superviseHours),
    ],
    supply: rows.map(({ supplyNow }) => supplyNow),
  });
}

/** Sites that works keep from being prepared, with their years. */
function blockedInWords(years: readonly YearRow[]): string {
  const sites = [...new Set(years.flatMap(({ blocked }) => blocked))];
  if (sites.length === 0) return '';
  const spans = sites.map((site) => {
    const of = years.filter(({ blocked }) => blocked.includes(site)).map(({ year }) => year);
    const id = site.split(' ')[0] ?? site;
    return `${id} (${of.length > 1 ? `${of[0] ?? ''} to ${of.at(-1) ?? ''}` : (of[0] ?? '')})`;
  });
  return ` Blocked by works: ${spans.join(', ')}.`;
}
