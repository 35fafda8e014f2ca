import { z } from 'zod';
import { bySeason, cubicYards, dollars, id } from './values.js';

/** Compost of one grade that the campus makes, opens with and may buy. */
const gradeFields = {
  madeCubicYards: bySeason(cubicYards).describe('Matured production by season.'),
  openingStockCubicYards: cubicYards,
  dollarsPerCubicYard: dollars.describe('Delivered, in the price year.'),
  mostBoughtCubicYardsPerSeason: z.int().min(0).max(100_000),
};

/** Compost that the campus makes, keeps and may buy. */
export const compostSchema = z
  .strictObject({
    ...gradeFields,
    yardCubicYards: cubicYards.describe(
      'Most that the yard holds at the end of a season, both grades together.',
    ),
    topDressSeason: id,
    topDressFromAge: z.int().min(1).max(100),
    otherGrade: z
      .strictObject(gradeFields)
      .optional()
      .describe(
        'Compost from batches without a test or heat log: it never goes on ground of an edible build type. Left out: there is none.',
      ),
  })
  .describe(
    'Amounts that stand here itself are certified: tested, or with a heat log. They may go anywhere.',
  );
