import type { CampusPlaces } from '#explain/documents/long-range/campus-places.js';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import type { FuturesAnswer } from '#futures/results/answer.js';
import { counted, dollarsInWords } from '#units/in-words.js';
import { bold } from '../document/inline.js';
import type { Block } from '../document/plan-document.js';
import { row, table, textColumn } from '../document/table.js';
import { heading, list, paragraph } from '../document/text-blocks.js';
import { futuresBlocks } from '../parts/futures.js';
import { busySeasonRows } from '../parts/season.js';

/** How sure the plan is, and everything that is not known. */
export function uncertaintyBlocks(
  overview: PlanOverview,
  places: CampusPlaces,
  futures?: FuturesAnswer,
): readonly Block[] {
  const { solve, unknowns } = overview;
  const busySeason = busySeasonRows(overview)[0]?.season ?? '';
  return [
    heading(1, 'What is not sure'),
    list('bullet', [
      [bold('The search. '), { text: solve.sentence }],
      [bold('The cost. '), { text: costSentence(places) }],
      [
        bold('The hours. '),
        {
          text: 'Planning coefficients, mostly judgement; one season of sign-in sheets and time cards on this campus is worth more than any of them.',
        },
      ],
      [bold('The future. '), { text: futures ? SAMPLED : NOT_SAMPLED }],
    ]),
    ...(futures ? futuresBlocks(futures, busySeason) : []),
    heading(2, 'What is not known'),
    ...(unknowns.length === 0
      ? [paragraph('Nothing is recorded as unknown. Ask those who know the ground.')]
      : [unknownTable(overview)]),
  ];
}

const SAMPLED =
  'This plan is worked out for one course of events. How it fares in others was sampled; it follows.';

const NOT_SAMPLED =
  'This plan is worked out for one course of events. How it fares when volunteers stay away, a gift comes late, or prices rise faster was not sampled for this document.';

function costSentence({ sites }: CampusPlaces): string {
  const bands = sites.flatMap(({ cost }) => (cost === null ? [] : [cost]));
  const sum = (of: (band: (typeof bands)[number]) => number) =>
    dollarsInWords(bands.reduce((total, band) => total + of(band), 0));
  if (bands.length === 0) return 'Nothing is built, so nothing is spent on building.';
  return `Building ${counted(bands.length, 'site')} is likely to cost ${sum(({ likely }) => likely)} in dollars of each year; every site at its low end makes ${sum(({ low }) => low)}, every site at its high end ${sum(({ high }) => high)}. All sites at one end is not likely: the range of the sum is narrower.`;
}

function unknownTable({ unknowns }: PlanOverview): Block {
  return table({
    caption: 'In the order in which the plan needs it; none of it is taken as zero',
    density: 'compact',
    columns: [
      textColumn('Of', 2),
      textColumn('Not known, and what rests on it', 5),
      textColumn('Who clears it', 3),
    ],
    rows: unknowns.map(({ site, name, what, consequence, clearedBy }) =>
      row(
        [site, name].filter((part) => part !== '').join(' '),
        `${what} ${consequence}`,
        clearedBy,
      ),
    ),
  });
}
