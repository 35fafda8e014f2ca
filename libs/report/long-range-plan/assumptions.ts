import type { Campus } from '#domain/campus.js';
import type { GradeSupply } from '#domain/compost.js';
import { COMPONENTS, type Provenance } from '#domain/component.js';
import { COMPONENT_WORDS } from '#domain/component-words.js';
import { centsToDollars } from '#units/cents.js';
import { centiToHours } from '#units/centihours.js';
import { centiToYards, centiYards } from '#units/centiyards.js';
import { fiscalYearLabel } from '#units/fiscal-year.js';
import { capitalized, counted, percentInWords, wholeInWords } from '#units/in-words.js';
import { bold, type Inline } from '../document/inline.js';
import type { Block } from '../document/plan-document.js';
import { numberColumn, row, table, textColumn } from '../document/table.js';
import { heading, list, paragraph } from '../document/text-blocks.js';

/** What the plan takes as given, each with its basis and source. */
export function assumptionBlocks(campus: Campus): readonly Block[] {
  return [
    heading(1, 'What the plan takes as given'),
    list('bullet', generalLines(campus)),
    typeTable(campus),
    careTable(campus),
    peopleTable(campus),
    ...positionTable(campus),
    fundTable(campus),
    benefitTable(campus),
  ];
}

function supplyInWords({ made, pricePerYard, mostBoughtPerSeason }: GradeSupply): string {
  const yearly = centiYards(Object.values(made).reduce<number>((sum, one) => sum + one, 0));
  const bought = `bought at $${centsToDollars(pricePerYard).toFixed(2).replace(/\.00$/, '')} a cubic yard delivered, at most ${wholeInWords(mostBoughtPerSeason)} a season`;
  return `${counted(centiToYards(yearly), 'cubic yard')} made a year; ${mostBoughtPerSeason > 0 ? bought : 'none bought'}`;
}

function generalLines(campus: Campus): Inline[] {
  const { escalation, compost, calendar } = campus;
  return [
    [
      bold('Prices. '),
      {
        text: `Of ${fiscalYearLabel(calendar.priceYear)}; growth a year: construction ${percentInWords(escalation.construction)}, wages ${percentInWords(escalation.wages)}, supplies ${percentInWords(escalation.supplies)}.`,
      },
    ],
    [
      bold('Compost. '),
      {
        text: `The yard holds ${counted(centiToYards(compost.yard), 'cubic yard')}. Certified (tested, or with a heat log), for food ground and elsewhere: ${supplyInWords(compost)}. ${compost.other ? `Other compost, never on food ground: ${supplyInWords(compost.other)}.` : 'All compost counts as certified: ask for the heat log of each batch.'} Waste: ${percentInWords(campus.materialWaste)}.`,
      },
    ],
    [
      bold('Works. '),
      {
        text: `Works at least ${campus.hardAtCertaintyPercent}% certain bar a site that would not have stood ${counted(campus.paybackYears, 'year')} when they begin.`,
      },
    ],
    [
      bold('Weight of the future. '),
      {
        text: `Benefit counts ${percentInWords(campus.benefit.discount)} less for each year later.`,
      },
    ],
  ];
}

function sourceText({ basis, source }: Provenance): Inline {
  return [bold(`${capitalized(basis)}. `), { text: source }];
}

function typeTable({ buildTypes }: Campus): Block {
  return table({
    caption: 'Build types, per 1,000 sq ft and per sq ft in prices of the price year',
    density: 'compact',
    columns: [
      textColumn('Build type', 2),
      numberColumn('Prepare, h'),
      numberColumn('Plant, h'),
      numberColumn('$/sq ft'),
      textColumn('Basis and source', 6),
    ],
    rows: buildTypes.map((type) =>
      row(
        type.name,
        String(type.prepareHoursPer1000SqFt),
        String(type.plantHoursPer1000SqFt),
        centsToDollars(type.costPerSqFt).toFixed(2),
        sourceText(type.provenance),
      ),
    ),
  });
}

function careTable({ care }: Campus): Block {
  return table({
    caption: 'Care, in hours per 1,000 sq ft and year',
    density: 'compact',
    columns: [
      textColumn('Component', 2),
      numberColumn('Year 1'),
      numberColumn('Mature'),
      numberColumn('Harvest'),
      textColumn('Basis and source', 6),
    ],
    rows: COMPONENTS.map((component) => {
      const of = care[component];
      return row(
        COMPONENT_WORDS[component],
        String(of.firstYearHours),
        String(of.matureHours),
        String(of.harvestHours),
        sourceText(of.provenance),
      );
    }),
    note: 'Care falls from the hours of year 1 to the mature ones: each year by the same share of what is left between the two, a share that the component has in the campus file.',
  });
}

function peopleTable({ pools, workDays, calendar }: Campus): Block {
  const seasons = calendar.seasons.map(({ id }) => id);
  const rows = [
    ...pools.map(({ name, hours, provenance }) =>
      row(
        name,
        ...seasons.map((season) => wholeInWords(centiToHours(hours[season] ?? NONE))),
        sourceText(provenance),
      ),
    ),
    ...workDays.map((day) =>
      row(
        `${day.name}, each of at most ${wholeInWords(day.mostPerSeason)}`,
        ...seasons.map((season) =>
          wholeInWords(day.season === season ? centiToHours(day.hoursEach) : 0),
        ),
        sourceText(day.provenance),
      ),
    ),
  ];
  if (rows.length === 0) return paragraph('The campus file names nobody who works.');
  return table({
    caption: 'People already there, in effective hours by season',
    density: 'compact',
    columns: [
      textColumn('Who', 2.6),
      ...seasons.map((season) => numberColumn(capitalized(season))),
      textColumn('Basis and source', 5),
    ],
    rows,
  });
}

const NONE = 0 as Campus['pools'][number]['hours'][string];

function positionTable({ positions }: Campus): readonly Block[] {
  if (positions.length === 0) return [paragraph('No position may be proposed.')];
  return [
    table({
      caption: 'Positions that a plan may propose',
      density: 'compact',
      columns: [
        textColumn('Position', 2),
        numberColumn('Months to start', 1.2),
        numberColumn('$ a year'),
        numberColumn('$ once'),
        numberColumn('Most'),
        textColumn('Basis and source', 5),
      ],
      rows: positions.map((position) =>
        row(
          position.name,
          String(position.leadMonths),
          wholeInWords(centsToDollars(position.annualCost)),
          wholeInWords(centsToDollars(position.oneTimeCost)),
          String(position.most),
          sourceText(position.provenance),
        ),
      ),
    }),
  ];
}

function fundTable({ funds, calendar }: Campus): Block {
  if (funds.length === 0) return paragraph('The campus file names no fund.');
  return table({
    caption: `Money, with what arrives in ${fiscalYearLabel(calendar.firstYear)}`,
    density: 'compact',
    columns: [
      textColumn('Fund', 5),
      textColumn('Status', 1.4),
      textColumn('Counted on', 1.4),
      numberColumn('First year, $', 1.4),
    ],
    rows: funds.map(({ name, status, counted: isCounted, inflows }) =>
      row(
        name,
        status,
        isCounted ? 'yes' : 'no',
        wholeInWords(
          centsToDollars(
            inflows
              .filter(({ year }) => year === calendar.firstYear)
              .reduce((sum, { amount }) => sum + amount, 0) as (typeof inflows)[number]['amount'],
          ),
        ),
      ),
    ),
  });
}

function benefitTable({ benefit }: Campus): Block {
  return table({
    caption: 'What counts as benefit, in points of 100',
    density: 'compact',
    columns: [
      textColumn('Criterion', 2),
      numberColumn('Points'),
      textColumn('Basis and source', 6),
    ],
    rows: benefit.criteria.map(({ name, weight, provenance }) =>
      row(name, String(weight), sourceText(provenance)),
    ),
  });
}
