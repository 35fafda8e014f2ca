import type {
  MoneyRow,
  PlanOverview,
  SeasonRow,
  YearRow,
} from '#explain/overview/plan-overview.js';
import { wholeInWords } from '#units/in-words.js';
import { numberColumn, row, table, textColumn, type Table } from '../document/table.js';
import { shareText } from '../figures/band-fills.js';
import { bandsOf } from './shares.js';
import { thousands } from './words.js';

const HOURS = ['Year 1', 'Years 2, 3', 'Mature', 'Other work', 'People there'];
const MONEY = ['In, $k', 'Build, $k', 'Run, $k', 'Left, $k'];

/** The data of both figures and the money of every year. An asterisk marks a site that needs a proposed position. */
export function yearTable(overview: PlanOverview, seasons: readonly SeasonRow[]): Table {
  const bands = bandsOf(overview);
  const season = new Map(seasons.map((one) => [one.year, one]));
  const money = new Map(overview.money.map((one) => [one.year, one]));
  return table({
    caption: `Year by year: ${seasons[0]?.season ?? ''} hours, percent of each limit, and thousands of dollars ($k)`,
    density: 'dense',
    columns: [
      textColumn('Year', 1),
      textColumn('Sites', 9),
      ...HOURS.map((header) => numberColumn(header)),
      ...bands.map(({ label }) => numberColumn(`${label}, %`)),
      ...MONEY.map((header) => numberColumn(header)),
    ],
    rows: overview.years.map((year, index) =>
      row(
        year.year,
        sitesOf(year),
        ...hoursOf(season.get(year.year)),
        ...bands.map(({ shares }) => shareText(shares[index])),
        ...moneyOf(money.get(year.year)),
      ),
    ),
    note: '* The care of this site, or of one before it, needs a position that is only proposed. Run: care supplies, compost, new positions and standing costs. Left: carried into the next year.',
  });
}

/** Most sites that a cell names. */
const MOST_NAMED = 8;

function sitesOf({ sites }: YearRow): string {
  const names = sites.map((s) => (s.needsProposedPosition ? `${s.site}*` : s.site));
  if (names.length > MOST_NAMED) {
    return `${names.slice(0, MOST_NAMED).join(', ')} and ${names.length - MOST_NAMED} more`;
  }
  return names.join(', ') || 'none';
}

function hoursOf(row: SeasonRow | undefined): string[] {
  if (!row) return HOURS.map(() => 'unknown');
  const { careByAge: care } = row;
  return [
    care.year1,
    care.year2 + care.year3,
    care.mature,
    row.buildHours + row.superviseHours,
    row.supplyNow,
  ].map(wholeInWords);
}

function moneyOf(row: MoneyRow | undefined): string[] {
  if (!row) return MONEY.map(() => 'unknown');
  const run = row.care + row.compost + row.positions + row.standing;
  return [row.received, row.build, run, row.closing].map(thousands);
}
