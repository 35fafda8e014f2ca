import type { Campus } from '#domain/campus.js';
import type { WorkYear } from '#explain/documents/work-year/work-year.js';
import type { FundRow, PlanOverview } from '#explain/overview/plan-overview.js';
import {
  capitalized,
  counted,
  dollarsInWords,
  firstInWords,
  hoursInWords,
  wholeInWords,
} from '#units/in-words.js';
import { callout } from '../document/boxes.js';
import { planDocument, type Edition } from '../document/edition.js';
import { bold, type Inline } from '../document/inline.js';
import type { Block, PlanDocument } from '../document/plan-document.js';
import { numberColumn, row, table, textColumn, type Row } from '../document/table.js';
import { heading, list, paragraph } from '../document/text-blocks.js';
import { aboutBlocks } from '../parts/about.js';
import { runOnCautionBox } from '../parts/caution-box.js';
import { commitmentTable } from '../parts/commitments.js';
import { wanted } from '../parts/season.js';
import { ESTIMATE_CLASS } from '../parts/words.js';

export interface AnnualSource {
  readonly overview: PlanOverview;
  readonly campus: Campus;
  /** The first year with a site. Null: none. */
  readonly work: WorkYear | null;
}

const NOT_RECORDED: Inline = [bold('not recorded')];

/** The first year of the plan against what happened, and the ledger of promises. */
export function annualReport(source: AnnualSource, edition: Edition): PlanDocument {
  const { overview, campus } = source;
  const { firstYear } = overview;
  return planDocument(overview, edition, {
    title: 'Annual report',
    subject: `${overview.campus.name}, ${firstYear}: the plan against what happened`,
    blocks: [
      callout('note', 'What happened is not on record yet', [
        `The campus file holds no actual hours, dollars or quantities. The plan’s side of ${firstYear} is complete below; the other side says so where nothing is recorded, and nothing is taken as zero.`,
      ]),
      heading(1, `${firstYear} as planned, and as it went`),
      workTable(source),
      moneyTable(overview),
      heading(1, 'Ledger of promises'),
      commitmentTable(overview, campus.commitments),
      heading(1, 'What to close before the next plan'),
      list('checkbox', closing(source)),
      ...runOnCautionBox('the work of the year', overview.cautions),
      ...aboutBlocks(),
    ],
  });
}

function workTable({ overview, work }: AnnualSource): Block {
  const { firstYear, seasons, compost } = overview;
  const year = work?.year === firstYear ? work : null;
  const held = year?.seasons.flatMap(({ workDays }) => workDays) ?? [];
  const sites = year?.sites ?? [];
  const ofYear = compost.filter(({ year }) => year === firstYear);
  const line = (what: string, planned: string): Row => row(what, planned, NOT_RECORDED);
  return table({
    caption: 'Sites, hours and materials',
    density: 'compact',
    columns: [textColumn('What', 3), textColumn('Planned', 3), textColumn('Happened', 1.6)],
    rows: [
      line(
        'Sites prepared',
        sites.length === 0 ? 'none' : firstInWords(sites.map(nameOf), MOST_NAMED, 'site'),
      ),
      ...seasons
        .filter(({ year }) => year === firstYear)
        .map((season) =>
          line(`${capitalized(season.season)}, all work`, hoursInWords(wanted(season))),
        ),
      ...held.map((day) => line(day.name, counted(day.count, 'time'))),
      line('Compost bought', yards(ofYear.reduce((sum, { bought }) => sum + bought, 0))),
      line('Compost used', yards(ofYear.reduce((sum, one) => sum + one.builds + one.topDress, 0))),
    ],
  });
}

function yards(amount: number): string {
  return counted(amount, 'cubic yard');
}

function moneyTable({ funds, firstYear }: PlanOverview): Block {
  const rows = funds.filter(({ year }) => year === firstYear);
  if (rows.length === 0) return paragraph(`No fund brings or holds money in ${firstYear}.`);
  const text = (dollars: number) => `$${wholeInWords(Math.round(dollars / 100) * 100)}`;
  return table({
    caption: `Money of ${firstYear}, by fund`,
    density: 'compact',
    columns: [
      textColumn('Fund', 4),
      numberColumn('To spend', 1.3),
      numberColumn('Planned to be spent', 1.5),
      numberColumn('Planned to lapse', 1.4),
      numberColumn('Planned to be left', 1.5),
      textColumn('Spent', 1.4),
    ],
    rows: rows.map((one: FundRow) =>
      row(
        one.name,
        text(one.opening + one.received + Math.max(0, one.paidBack)),
        text(one.spent + Math.max(0, -one.paidBack)),
        text(one.lapsed),
        text(one.closing),
        NOT_RECORDED,
      ),
    ),
    note: `Each to $100. ${ESTIMATE_CLASS}`,
  });
}

function nameOf({ site, name }: { readonly site: string; readonly name: string }): string {
  return `${site} ${name}`;
}

/** Most sites that the list of what to do names one by one. */
const MOST_NAMED = 6;

function sitesToNote(sites: AnnualSource['overview']['next']['sites']): string[] {
  if (sites.length > MOST_NAMED) {
    return [
      `Note for each of the ${wholeInWords(sites.length)} sites whether it was prepared and planted, and when.`,
    ];
  }
  return sites.map(
    (site) => `Note for ${nameOf(site)} whether it was prepared and planted, and when.`,
  );
}

function closing({ overview, campus }: AnnualSource): string[] {
  const { firstYear, lapses, next } = overview;
  return [
    `Enter the hours of ${firstYear} by people and month from sign-in sheets and time cards, the dollars by fund, and the cubic yards delivered.`,
    ...sitesToNote(next.sites),
    ...lapses
      .filter(({ year }) => year === firstYear)
      .map(
        ({ name, dollars }) =>
          `Ask the giver about ${dollarsInWords(dollars)} of ${name} that lapses.`,
      ),
    'Say for each promise whether it was kept, who decided otherwise, and what was told to whom.',
    campus.published === undefined
      ? 'No earlier plan is on record to set beside this one; keep this version for next year.'
      : 'Set the published plan of the campus file beside this one, and say what moved and why.',
  ];
}
