import { anError, aWarning, type Problem } from '#domain/problem.js';
import type { FileView } from './file-view.js';

/** More compost than the yard holds. */
export function compostProblems({ compost }: FileView): Problem[] {
  if (!compost) return [];
  const { openingStockCubicYards: stock, yardCubicYards: yard, madeCubicYards: made } = compost;
  const problems = Object.entries(made)
    .filter(([, amount]) => amount > yard)
    .map(([season, value]) =>
      aWarning(
        { code: 'COMPOST-OVER-YARD', record: 'compost', field: `madeCubicYards.${season}`, value },
        [
          `${value} cubic yards mature in ${season}, and the yard holds ${yard}: the rest is given away.`,
          'Check both numbers, and that they are cubic yards of matured compost.',
        ],
      ),
    );
  if (stock <= yard) return problems;
  return [
    ...problems,
    anError(
      {
        code: 'COMPOST-OVER-YARD',
        record: 'compost',
        field: 'openingStockCubicYards',
        value: stock,
      },
      [
        `The opening stock of ${stock} cubic yards is more than the yard holds (${yard}).`,
        'Correct one of the two.',
      ],
    ),
  ];
}
