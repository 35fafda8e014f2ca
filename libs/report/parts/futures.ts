import type { FuturesAnswer } from '#futures/results/answer.js';
import { fiscalYear, fiscalYearLabel } from '#units/fiscal-year.js';
import { capitalized, wholeInWords } from '#units/in-words.js';
import { quantileInWords, quantilesInWords, shareInWords } from '#units/sampled-in-words.js';
import type { Block } from '../document/plan-document.js';
import { numberColumn, row, table, textColumn, type Table } from '../document/table.js';
import { heading, paragraph, smallPrint } from '../document/text-blocks.js';
import { spreadFigure } from '../figures/spread-figure.js';

type Result = FuturesAnswer['fixed'];
type Season = Result['seasons'][number];

/** Years of promises that a table shows at the most. */
const MOST_YEARS = 7;

/** `right to within 4 percentage points`. */
export function errorInWords({ mostErrorPoints }: FuturesAnswer['fixed']): string {
  return `right to within ${wholeInWords(mostErrorPoints)} percentage points`;
}

/** How a plan fares in sampled futures: care against hours, and how long each promise is kept. */
export function futuresBlocks(answer: FuturesAnswer, busySeason: string): readonly Block[] {
  const { fixed, mended, headline } = answer;
  const seasons = fixed.seasons.filter(({ season }) => season === busySeason);
  return [
    heading(2, 'If things go otherwise'),
    paragraph(
      `${headline} The plan was put through ${wholeInWords(fixed.futures)} sampled futures, in which prices, gifts, works, work days, compost, and staff who leave do not keep to it; shares are ${errorInWords(fixed)}. ${fixed.recourse}`,
    ),
    ...(seasons.length > 0 ? [careFigure(seasons, busySeason)] : []),
    promiseTable(fixed, 'the plan kept as it is'),
    ...(mended ? [paragraph(mended.recourse), promiseTable(mended, MADE_ANEW)] : []),
    smallPrint(`The same in every future: ${answer.held.join(' ')}`),
  ];
}

const MADE_ANEW = 'the plan made anew each year';

function careFigure(seasons: readonly Season[], busySeason: string): Block {
  const name = capitalized(busySeason);
  const last = seasons.at(-1);
  const unserved = seasons.filter(({ short }) => short.share > 0.5).length;
  return spreadFigure(
    {
      title: `${name} care in sampled futures, and the hours there for it`,
      columns: seasons.map(({ year }) => shortYear(year)),
      unit: 'Hours',
      bars: { label: 'Care wanted', spreads: seasons.map(({ wanted }) => valuesOf(wanted)) },
      band: { label: 'Hours there', spreads: seasons.map(({ there }) => valuesOf(there)) },
    },
    {
      alt: `${name} care wanted and hours there for it by fiscal year, each as the range that eight of ten futures lie in with its middle. ${last ? `In ${last.label} the middle future wants ${quantileInWords(last.wanted.p50)} hours and has ${quantileInWords(last.there.p50)}.` : ''} ${wholeInWords(unserved)} of ${wholeInWords(seasons.length)} years are more likely than not short of care. The table that follows has every value.`,
      table: careTable(seasons, name),
    },
  );
}

/** `FY28` */
function shortYear(year: number): string {
  return fiscalYearLabel(fiscalYear(year));
}

function valuesOf({ p10, p50, p90 }: Season['wanted']) {
  return { low: p10.value, middle: p50.value, high: p90.value };
}

function careTable(seasons: readonly Season[], name: string): Table {
  const three = ({ p10, p50, p90 }: Season['wanted']) => quantilesInWords([p10, p50, p90]);
  return table({
    caption: `${name} hours: one future in ten lies below the low number, one in ten above the high one`,
    density: 'dense',
    columns: [
      textColumn(`${name} that opens in`, 1.6),
      ...[
        'Wanted, low',
        'Wanted, middle',
        'Wanted, high',
        'There, low',
        'There, middle',
        'There, high',
      ].map((label) => numberColumn(label)),
      numberColumn('Undone, high', 1.2),
      numberColumn('Short in', 1.2),
    ],
    rows: seasons.map(({ year, wanted, there, unserved, short }) =>
      row(
        shortYear(year),
        ...three(wanted),
        ...three(there),
        quantileInWords(unserved.p90),
        shareInWords(short),
      ),
    ),
    note: 'Undone, high: hours of care left undone that one future in ten goes above. Short in: share of futures in which an hour or more is left undone. No more digits than sampling allows.',
  });
}

function promiseTable(result: Result, how: string): Block {
  const { promises, futures } = result;
  const years = promises[0]?.keptThrough.map(({ year }) => year) ?? [];
  if (years.length === 0) return paragraph('The campus file records no promise.');
  const every = Math.max(1, Math.ceil((years.length - 1) / (MOST_YEARS - 1)));
  const shown = years
    .map((_, place) => place)
    .filter((place) => (years.length - 1 - place) % every === 0);
  return table({
    caption: `Futures in which each promise is kept in every year through the one named, ${how}`,
    density: 'compact',
    columns: [
      textColumn('Promise', 4),
      ...shown.map((place) => numberColumn(shortYear(years[place] ?? 0))),
    ],
    rows: promises.map(({ name, planBreaks, keptThrough }) =>
      row(
        planBreaks === null
          ? name
          : `${name} (the plan itself breaks it in ${shortYear(planBreaks)})`,
        ...shown.map((place) => {
          const share = keptThrough[place];
          return share ? shareInWords(share) : '–';
        }),
      ),
    ),
    note: `${wholeInWords(futures)} futures; shares are ${errorInWords(result)}.`,
  });
}
