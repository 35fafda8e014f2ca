import type { NextSite, NextYear, Reason, UnknownRow } from '#explain/overview/plan-overview.js';
import { counted, squareFeetInWords } from '#units/in-words.js';
import { bold } from '../document/inline.js';
import { row, table, textColumn, type Row, type Table } from '../document/table.js';
import { firstSentence } from '../parts/first-sentence.js';
import { ESTIMATE_CLASS } from '../parts/words.js';

interface Room {
  readonly for: number;
  readonly against: number;
  readonly open: number;
}

/** Most lines of each site in a brief on one, two, or more sites: the weightiest, so that it stays brief. */
const ROOM: readonly Room[] = [
  { for: 5, against: 4, open: 3 },
  { for: 3, against: 2, open: 2 },
];
const LEAST_ROOM: Room = { for: 2, against: 1, open: 1 };

/** Most sites that a brief tells of, so that it stays one. */
const MOST_SITES = 6;

/** What each site of the year becomes, what speaks for it and against it, and what is open. */
export function factTable(next: NextYear): Table {
  const { year, sites, comparedWith } = next;
  const room = ROOM[sites.length - 1] ?? LEAST_ROOM;
  const left = sites.slice(0, MOST_SITES).reduce((sum, site) => sum + leftOut(site, room), 0);
  const more = left > 0 ? ` ${counted(left, 'more line is', 'more lines are')} with the plan.` : '';
  const rest = sites.length - MOST_SITES;
  const later =
    rest > 0 ? ` The other ${counted(rest, 'site')} of ${year} stand in the long-range plan.` : '';
  const others = counted(comparedWith, 'other candidate');
  return table({
    caption: 'For and against, the weightiest first, and what is open',
    density: 'compact',
    columns: [
      textColumn('Side', sites.length > 1 ? 1.6 : 1),
      textColumn('Fact', 7),
      textColumn('Source, or who clears it', 3),
    ],
    rows: sites.slice(0, MOST_SITES).flatMap((site) => siteRows(site, next, room)),
    note: `Places: among the site and ${others} open in ${year}, each as the plan would build it; no other choice was solved.${more}${later} ${ESTIMATE_CLASS}`,
  });
}

function siteRows(site: NextSite, { planting, sites }: NextYear, room: Room): Row[] {
  const side = (name: string) => (sites.length > 1 ? `${site.site}, ${name.toLowerCase()}` : name);
  const later = site.later === undefined ? '' : ` ${site.later}`;
  const becomes = `${site.buildType}, ${squareFeetInWords(site.areaSqFt)} in ${site.zone}, planted ${planting}.${later}`;
  return [
    row(
      side('Site'),
      sites.length > 1 ? [bold(`${site.name}. `), { text: becomes }] : becomes,
      'campus file',
    ),
    ...site.reasons.slice(0, room.for).map((reason) => line(side('For'), reason)),
    ...site.against.slice(0, room.against).map((reason) => line(side('Against'), reason)),
    ...(site.against.length === 0 ? [row(side('Against'), NOTHING_AGAINST, 'this plan')] : []),
    ...site.openGates.slice(0, room.open).map((gate) => openLine(side('Open'), gate)),
    ...(site.openGates.length === 0 ? [row(side('Open'), NOTHING_OPEN, 'gates and facts')] : []),
  ];
}

const NOTHING_AGAINST = 'Nothing is recorded. Ask those who know the ground.';
const NOTHING_OPEN = 'Nothing is recorded. Utility marks and a site walk still come first.';

function leftOut({ reasons, against, openGates }: NextSite, room: Room): number {
  return (
    Math.max(0, reasons.length - room.for) +
    Math.max(0, against.length - room.against) +
    Math.max(0, openGates.length - room.open)
  );
}

function line(side: string, { sentence, source }: Reason): Row {
  return row(side, sentence, source);
}

function openLine(side: string, { what, consequence, clearedBy }: UnknownRow): Row {
  return row(side, `${what} ${consequence}`, firstSentence(clearedBy));
}
