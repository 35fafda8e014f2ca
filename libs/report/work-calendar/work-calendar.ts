import type { WorkSeason, WorkYear } from '#explain/documents/work-year/work-year.js';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { dayInWords } from '#units/dates-in-words.js';
import { counted, hoursInWords, wholeInWords } from '#units/in-words.js';
import { planDocument, type Edition } from '../document/edition.js';
import { bold, type Inline } from '../document/inline.js';
import type { Block, PlanDocument } from '../document/plan-document.js';
import { row, table, textColumn, type Row } from '../document/table.js';
import { heading, pageBreak, paragraph, smallPrint } from '../document/text-blocks.js';
import { nothingPrepared } from '../parts/nothing-prepared.js';
import { safetyCard } from './safety-card.js';

/** The year's work season by season on one page, and the safety card on the next. */
export function workCalendar(
  overview: PlanOverview,
  year: WorkYear | null,
  edition: Edition,
): PlanDocument {
  return planDocument(overview, edition, {
    title: 'Work calendar',
    subject:
      year === null
        ? `${overview.campus.name}: no building season`
        : `${overview.campus.name}, ${year.year}: who does what when`,
    blocks: year === null ? nothingPrepared(overview) : calendarBlocks(year),
  });
}

/** Most sites that the first line names; where there are more, the table of tickets does. */
const MOST_NAMED = 6;

function sitesInWords({ sites }: WorkYear): string {
  if (sites.length > MOST_NAMED)
    return `${wholeInWords(sites.length)}, each with its locate ticket below`;
  return sites.map(({ site, name }) => `${site} ${name}`).join('; ');
}

function calendarBlocks(year: WorkYear): readonly Block[] {
  return [
    paragraph(bold(`Sites of ${year.year}: `), `${sitesInWords(year)}.`),
    table({
      caption: 'The year’s work',
      density: 'compact',
      columns: [
        textColumn('When', 2),
        textColumn('Task', 4.6),
        textColumn('Who leads', 2),
        textColumn('People and hours', 2.6),
      ],
      rows: year.seasons.flatMap((season) => seasonRows(season, year)),
      note: 'Hours are effective hours of the plan, a forecast. Leaders are named by the program manager for each day.',
    }),
    ticketTable(year),
    smallPrint(
      'Nobody digs, plants with a spade, drives stakes or aerates at a site until its ticket is written here and still holds. The wait and the width to dig by hand are set by state law.',
    ),
    pageBreak(),
    heading(1, 'Safety card'),
    ...safetyCard(),
  ];
}

function seasonRows(season: WorkSeason, year: WorkYear): Row[] {
  return [
    ...(season.role === 'prepare' ? prepareRows(season, year) : []),
    ...(season.role === 'plant' ? plantRows(season, year) : []),
    ...season.workDays.map((day) =>
      row(
        season.months,
        `${day.name}: ${counted(day.count, 'time')}`,
        counted(day.leaders, 'leader'),
        `${counted(day.people, 'person', 'people')} each time`,
      ),
    ),
    row(
      season.months,
      careTask(season),
      'Gardener',
      hoursInWords(season.careHours + season.harvestHours),
    ),
  ];
}

function prepareRows(season: WorkSeason, { sites, deliveries }: WorkYear): Row[] {
  return [
    row(
      'At least 10 days before',
      'Ask for locates at each site, public and campus lines; write the tickets below',
      'Program manager',
      'no digging without',
    ),
    ...deliveries.map(({ site, material, loads, from, to }) =>
      row(
        `${dayInWords(from)} to ${dayInWords(to)}`,
        `${site}: ${material.toLowerCase()}, ${counted(loads, 'load')} to arrive (proposed)`,
        'Grounds',
        '1 spotter for each truck',
      ),
    ),
    ...sites.map(({ site, takeoff, prepareHours }) =>
      row(
        season.months,
        `${site}: mow low, cover, ${wholeInWords(takeoff.compostCuYd)} cu yd of compost and ${wholeInWords(takeoff.chipsCuYd)} of chips; last mulch before the ground freezes`,
        'Program lead',
        hoursInWords(prepareHours),
      ),
    ),
  ];
}

function plantRows(season: WorkSeason, { sites }: WorkYear): Row[] {
  return sites.map(({ site, plantHours }) =>
    row(
      season.months,
      `${site}: plant; hardy plants as the soil drains, tender ones after the last frost`,
      'Program lead',
      hoursInWords(plantHours),
    ),
  );
}

function careTask({ harvestHours, topDress }: WorkSeason): string {
  const parts = [
    'Care of all sites',
    ...(harvestHours >= 0.5 ? ['harvest, washed and logged by site and date'] : []),
    ...(topDress >= 0.5 ? [`${wholeInWords(topDress)} cu yd of top-dressing`] : []),
  ];
  return parts.join('; ');
}

function ticketTable({ sites }: WorkYear): Block {
  const blank: Inline = '____________';
  return table({
    caption: 'Locate tickets, written in by hand',
    density: 'compact',
    columns: [
      textColumn('Site', 3),
      textColumn('Public ticket', 2),
      textColumn('Campus ticket', 2),
      textColumn('Both hold until', 2),
    ],
    rows: sites.map(({ site, name }) => row(`${site} ${name}`, blank, blank, blank)),
  });
}
