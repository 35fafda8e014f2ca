import { anError, aWarning, type Problem } from '#domain/problem.js';
import type { FileView } from './file-view.js';

type CompostPart = NonNullable<FileView['compost']>;

/** More compost than the yard holds, or of a grade that makes no sense beside the other. */
export function compostProblems(view: FileView): Problem[] {
  const { compost } = view;
  if (!compost) return [];
  return [
    ...madeProblems(compost, 'madeCubicYards'),
    ...(compost.otherGrade
      ? madeProblems({ ...compost, ...compost.otherGrade }, 'otherGrade.madeCubicYards')
      : []),
    ...stockProblems(compost),
    ...priceProblems(compost),
    ...foodProblems(view, compost),
  ];
}

function madeProblems({ madeCubicYards, yardCubicYards: yard }: CompostPart, field: string) {
  return Object.entries(madeCubicYards)
    .filter(([, amount]) => amount > yard)
    .map(([season, value]) =>
      aWarning(
        { code: 'COMPOST-OVER-YARD', record: 'compost', field: `${field}.${season}`, value },
        [
          `${value} cubic yards mature in ${season}, and the yard holds ${yard}: the rest is given away.`,
          'Check both numbers, and that they are cubic yards of matured compost.',
        ],
      ),
    );
}

function stockProblems(compost: CompostPart): Problem[] {
  const { openingStockCubicYards, yardCubicYards: yard, otherGrade } = compost;
  const stock = openingStockCubicYards + (otherGrade?.openingStockCubicYards ?? 0);
  if (stock <= yard) return [];
  const at = { record: 'compost', field: 'openingStockCubicYards', value: openingStockCubicYards };
  return [
    anError({ code: 'COMPOST-OVER-YARD', ...at }, [
      `The opening stock of ${stock} cubic yards is more than the yard holds (${yard}).`,
      'Correct the opening stock, of both grades if there are two, or what the yard holds.',
    ]),
  ];
}

/** Certified compost may go wherever the other may, so at no higher price it is always the one bought. */
function priceProblems({ dollarsPerCubicYard: certified, otherGrade }: CompostPart): Problem[] {
  if (!otherGrade || otherGrade.mostBoughtCubicYardsPerSeason === 0) return [];
  const value = otherGrade.dollarsPerCubicYard;
  if (value < certified) return [];
  const at = { record: 'compost', field: 'otherGrade.dollarsPerCubicYard', value };
  return [
    aWarning({ code: 'COMPOST-GRADE-PRICE', ...at }, [
      `Compost that may not go on food ground costs $${value} a cubic yard, and certified compost $${certified}: it would never be worth buying.`,
      'Check that the two prices have not been exchanged.',
    ]),
  ];
}

/** Ground that grows food, and not a cubic yard that may go on it. */
function foodProblems({ buildTypes }: FileView, compost: CompostPart): Problem[] {
  const { madeCubicYards, openingStockCubicYards, mostBoughtCubicYardsPerSeason } = compost;
  const made = Object.values(madeCubicYards).reduce((sum, amount) => sum + amount, 0);
  const there = made + openingStockCubicYards + mostBoughtCubicYardsPerSeason;
  const food = buildTypes.filter(({ edible }) => edible);
  if (!compost.otherGrade || there > 0 || food.length === 0) return [];
  const at = { record: 'compost', field: 'madeCubicYards', value: madeCubicYards };
  return [
    aWarning({ code: 'COMPOST-NONE-CERTIFIED', ...at }, [
      `No compost is certified, so nothing can be built as ${food.map(({ id }) => id).join(', ')}: food ground takes certified compost alone.`,
      'Give what is tested or has a heat log beside otherGrade, or allow certified compost to be bought.',
    ]),
  ];
}
