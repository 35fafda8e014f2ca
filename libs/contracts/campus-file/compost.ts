import { z } from 'zod';
import { bySeason, cubicYards, dollars, id } from './values.js';

/** Compost that the campus makes, keeps and may buy. */
export const compostSchema = z.strictObject({
  madeCubicYards: bySeason(cubicYards).describe('Matured production by season.'),
  openingStockCubicYards: cubicYards,
  yardCubicYards: cubicYards.describe('Most that the yard holds at the end of a season.'),
  dollarsPerCubicYard: dollars.describe('Delivered, in the price year.'),
  mostBoughtCubicYardsPerSeason: z.int().min(0).max(100_000),
  topDressSeason: id,
  topDressFromAge: z.int().min(1).max(100),
});
