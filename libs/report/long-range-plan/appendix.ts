import type { GradeRow, PlanOverview, SeasonRow } from '#explain/overview/plan-overview.js';
import { capitalized, wholeInWords } from '#units/in-words.js';
import type { Block } from '../document/plan-document.js';
import { numberColumn, row, table, textColumn } from '../document/table.js';
import { heading, paragraph } from '../document/text-blocks.js';
import { wanted } from '../parts/season.js';
import { thousands } from '../parts/words.js';

/** Hours of all seasons, money, funds and compost, year by year. */
export function appendixBlocks(overview: PlanOverview): readonly Block[] {
  return [
    heading(1, 'Appendix: year by year'),
    seasonTable(overview),
    moneyTable(overview),
    fundTable(overview),
    compostTable(overview),
    ...gradeTable(overview),
  ];
}

function within({ seasons }: PlanOverview): readonly SeasonRow[] {
  return seasons.filter(({ afterHorizon }) => !afterHorizon);
}

function seasonTable(overview: PlanOverview): Block {
  const rows = within(overview);
  const names = [...new Set(rows.map(({ season }) => season))];
  const years = [...new Set(rows.map(({ year }) => year))];
  return table({
    caption: 'Hours wanted, of those already there, and short without what is proposed',
    density: 'dense',
    columns: [
      textColumn('Year', 1),
      ...names.flatMap((name) => [
        numberColumn(`${capitalized(name)}, wanted`),
        numberColumn('there'),
        numberColumn('short'),
      ]),
    ],
    rows: years.map((year) =>
      row(
        year,
        ...names.flatMap((name) => {
          const of = rows.find((one) => one.year === year && one.season === name);
          return of
            ? [wanted(of), of.supplyNow, of.shortNow].map(wholeInWords)
            : ['unknown', 'unknown', 'unknown'];
        }),
      ),
    ),
  });
}

function moneyTable({ money }: PlanOverview): Block {
  return table({
    caption: 'Money in thousands of dollars of each year',
    density: 'dense',
    columns: [
      textColumn('Year', 1),
      numberColumn('In'),
      numberColumn('Build'),
      numberColumn('Care supplies', 1.3),
      numberColumn('Positions', 1.1),
      numberColumn('Compost'),
      numberColumn('Standing', 1.1),
      numberColumn('Lapsed'),
      numberColumn('Carried on', 1.2),
    ],
    rows: money.map((one) =>
      row(
        one.year,
        ...[
          one.received,
          one.build,
          one.care,
          one.positions,
          one.compost,
          one.standing,
          one.lapsed,
          one.closing,
        ].map(thousands),
      ),
    ),
    note: 'Carried on: left of the year before, and in, less all that is spent and lapsed.',
  });
}

function fundTable({ funds }: PlanOverview): Block {
  const names = new Map(funds.map(({ fund, name }) => [fund, name]));
  if (names.size === 0) return paragraph('No fund brings or holds money in any year of the plan.');
  const sum = (fund: string, of: 'received' | 'spent' | 'lapsed') =>
    funds.filter((one) => one.fund === fund).reduce((total, one) => total + one[of], 0);
  // What a grant pays back is spent by the grant and comes in at the fund that fronted it.
  const back = (fund: string, sign: 1 | -1) =>
    funds
      .filter((one) => one.fund === fund)
      .reduce((total, { paidBack }) => total + Math.max(0, sign * paidBack), 0);
  return table({
    caption: 'Funds over all years of the plan, in thousands of dollars of each year',
    density: 'compact',
    columns: [
      textColumn('Fund', 5),
      numberColumn('At the start'),
      numberColumn('In'),
      numberColumn('Spent'),
      numberColumn('Lapsed'),
      numberColumn('Left'),
    ],
    rows: [...names].map(([fund, name]) => {
      const of = funds.filter((one) => one.fund === fund);
      return row(
        name,
        thousands(of[0]?.opening ?? 0),
        thousands(sum(fund, 'received') + back(fund, 1)),
        thousands(sum(fund, 'spent') + back(fund, -1)),
        thousands(sum(fund, 'lapsed')),
        thousands(of.at(-1)?.closing ?? 0),
      );
    }),
    note: 'Funds that are not counted on are not here; the table of what the plan takes as given lists them.',
  });
}

function compostTable({ compost }: PlanOverview): Block {
  const years = [...new Set(compost.map(({ year }) => year))];
  type Flow = 'made' | 'bought' | 'builds' | 'topDress' | 'givenAway';
  return table({
    caption: 'Compost in cubic yards, waste included',
    density: 'dense',
    columns: [
      textColumn('Year', 1),
      numberColumn('Made'),
      numberColumn('Bought'),
      numberColumn('New sites'),
      numberColumn('Top-dressing', 1.2),
      numberColumn('Given away', 1.2),
      numberColumn('In stock at the end', 1.6),
    ],
    rows: years.map((year) => {
      const of = compost.filter((one) => one.year === year);
      const sum = (flow: Flow) => wholeInWords(of.reduce((total, one) => total + one[flow], 0));
      return row(
        year,
        sum('made'),
        sum('bought'),
        sum('builds'),
        sum('topDress'),
        sum('givenAway'),
        wholeInWords(of.at(-1)?.stock ?? 0),
      );
    }),
  });
}

/** By grade, where a campus makes or buys two: what food ground may take, and what it may not. */
function gradeTable({ compost }: PlanOverview): Block[] {
  const graded = compost.flatMap(({ year, grades }) => (grades ? [{ year, ...grades }] : []));
  if (graded.length === 0) return [];
  const years = [...new Set(graded.map(({ year }) => year))];
  const cells = (of: readonly GradeRow[]) => {
    const sum = (part: keyof GradeRow) => of.reduce((total, one) => total + one[part], 0);
    const left = of.at(-1)?.stock ?? 0;
    return [sum('made') + sum('bought'), sum('used'), sum('givenAway'), left].map(wholeInWords);
  };
  const heads = ['used', 'given away', 'in stock at the end'].map((head) => numberColumn(head));
  return [
    table({
      caption: 'Compost by grade, in cubic yards: food ground takes certified compost alone',
      density: 'dense',
      columns: [
        textColumn('Year', 1),
        numberColumn('Certified, made or bought'),
        ...heads,
        numberColumn('Other, made or bought'),
        ...heads,
      ],
      rows: years.map((year) => {
        const of = graded.filter((one) => one.year === year);
        return row(
          year,
          ...cells(of.map(({ certified }) => certified)),
          ...cells(of.map(({ other }) => other)),
        );
      }),
    }),
  ];
}
