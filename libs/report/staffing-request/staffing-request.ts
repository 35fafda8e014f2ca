import type { StaffingRequest } from '#explain/documents/staffing/staffing-request.js';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import {
  capitalized,
  dollarsInWords,
  hoursInWords,
  listInWords,
  wholeInWords,
} from '#units/in-words.js';
import { callout, caution, signatures } from '../document/boxes.js';
import { planDocument, type Edition } from '../document/edition.js';
import { bold } from '../document/inline.js';
import type { Block, PlanDocument } from '../document/plan-document.js';
import { numberColumn, row, table, textColumn } from '../document/table.js';
import { heading, list, smallPrint } from '../document/text-blocks.js';
import { askBlocks } from '../parts/asks.js';
import { optionBlocks } from '../parts/options.js';
import { monthFigure } from './month-figure.js';

/** Hours by month against people, and what is asked for, for those who own the crew. */
export function staffingRequestDocument(
  overview: PlanOverview,
  staffing: StaffingRequest,
  edition: Edition,
): PlanDocument {
  return planDocument(overview, edition, {
    title: 'Grounds staffing request',
    subject: `${overview.campus.name}: hours by month, and whose they are`,
    blocks: [
      callout('decision', 'Asked for', [askSentence(overview)]),
      list('bullet', [
        [bold('If the answer is no. '), { text: riskSentence(staffing) }],
        [bold('If the students were not there. '), { text: studentSentence(staffing) }],
      ]),
      monthFigure(staffing),
      smallPrint(SHARED),
      heading(1, 'Whose hours, what to ask, what else could be done'),
      peopleTable(staffing),
      ...askBlocks(overview),
      ...optionBlocks(overview),
      caution('who does the work', [
        LABOR,
        [bold('Not in the campus file: '), { text: NOT_RECORDED }],
      ]),
      signatures(
        'Seen. A signature agrees to talk about these hours, not to a position or to money.',
        ['Grounds superintendent', 'Program manager', 'Human resources or budget office'],
      ),
    ],
  });
}

const SHARED =
  'By month, a season’s care and building are shared evenly; students, courses and work days by class days. Planning coefficients, mostly judgement, with no gain from practice counted: a forecast, not a staffing entitlement.';

const LABOR =
  'Volunteers, courses and students work beside represented staff and never in their place: check the labor agreements, overtime and work-study limits before anything is agreed. A course is instruction first.';

const NOT_RECORDED =
  'mower routes, snow storage, and who owns the sites when the program manager leaves. Walk the sites with grounds before the first of them is approved.';

function askSentence({ hires }: PlanOverview): string {
  const [first] = hires;
  if (!first) return 'No new position. The hours below are to be agreed with those already there.';
  const each = first.term === 'recurring' ? 'a year' : 'for the season';
  const name = first.count === 1 ? first.position : `${first.count} × ${first.position}`;
  const later = hires.length > 1 ? ' Later asks are listed below.' : '';
  return `${name}: to be asked for by ${first.askBy}, to start in ${first.startsIn}, at ${dollarsInWords(first.annualDollars)} ${each}.${later}`;
}

function riskSentence({ year, short, seasons, worst }: StaffingRequest): string {
  if (!short || !worst) {
    return `Those already there suffice for every season of the plan; ${year}, its last year, is shown.`;
  }
  const first = seasons
    .filter((season) => season.short > 0)
    .map((season) => `${hoursInWords(season.short)} in ${season.season}`);
  return `In ${year}, the first short year, ${listInWords(first)} of the plan’s work have no one to do them. It is worst in ${worst.label}: ${hoursInWords(worst.hours)}. Care then falls to a lower level, and weeds set young sites back.`;
}

function studentSentence({ year, seasons }: StaffingRequest): string {
  const lost = seasons.filter((one) => one.shortWithoutStudents > one.short);
  if (lost.length === 0) return `No season of ${year} rests on term students or courses.`;
  const parts = lost.map(
    (one) => `${hoursInWords(one.shortWithoutStudents - one.short)} in ${one.season}`,
  );
  return `In ${year}, ${listInWords(parts)} more would go undone.`;
}

function peopleTable({ year, people, seasons }: StaffingRequest): Block {
  return table({
    caption: `People already there in ${year}, in effective hours that the work can use`,
    density: 'dense',
    columns: [
      textColumn('Who', 3.4),
      ...seasons.map(({ season }) => numberColumn(capitalized(season))),
    ],
    rows: [
      ...people
        .filter(({ bySeason }) => bySeason.some((hours) => hours >= 0.5))
        .map(({ name, bySeason }) => row(name, ...bySeason.map(wholeInWords))),
      total('All of them', (season) => season.people),
      total('Wanted', (season) => season.wanted),
      total('Undone', (season) => season.short),
    ],
    note: 'Who may do only a part of the work is counted for that part, so undone can be more than wanted less people.',
  });

  function total(name: string, of: (season: StaffingRequest['seasons'][number]) => number) {
    const cells = seasons.map((season) => wholeInWords(of(season)));
    return { cells: [name, ...cells], emphasis: 'total' } as const;
  }
}
