import { z } from 'zod';
import { bySeason, dollars, id, inches, provenance, share, text } from './values.js';

function byComponent<T extends z.ZodType>(amount: T) {
  return z.strictObject({
    'annual-bed': amount,
    'perennial-bed': amount,
    woody: amount,
    'rain-garden': amount,
    meadow: amount,
    path: amount,
  });
}

const hoursPer1000SqFt = z.number().min(0).max(2000).describe('Hours per 1,000 square feet.');

/** What a site can become. */
export const buildTypeSchema = z.strictObject({
  id,
  name: text,
  edible: z.boolean().describe('Grows food in the ground: contamination gates apply.'),
  componentShares: byComponent(share).describe('Shares of the site area; they add up to 1.'),
  compostInches: byComponent(inches),
  chipInches: byComponent(inches),
  prepareHoursPer1000SqFt: hoursPer1000SqFt.describe('Hours as volunteers work, per 1,000 sf.'),
  plantHoursPer1000SqFt: hoursPer1000SqFt.describe('Hours as volunteers work, per 1,000 sf.'),
  costDollarsPerSqFt: z
    .number()
    .min(0)
    .max(1000)
    .describe('Capital in the price year, contingency included, bought compost not.'),
  provenance,
});

export const careCoefficientsSchema = z.strictObject({
  firstYearHoursPer1000SqFt: hoursPer1000SqFt,
  matureHoursPer1000SqFt: hoursPer1000SqFt,
  decayPerYear: z.number().min(0).max(10).describe('Rate at which care falls to mature level.'),
  seasonShares: bySeason(share).describe("Share of the year's care by season; adds up to 1."),
  harvestHoursPer1000SqFt: hoursPer1000SqFt.describe('Harvest of a full crop; 0: not picked.'),
  bearing: z
    .array(share)
    .min(1)
    .max(60)
    .describe('Share of a full crop at age 1, 2, 3 ...; the last one holds from there on.'),
  harvestSeasonShares: bySeason(share).describe('Share of the harvest hours by season.'),
  suppliesDollarsPer1000SqFt: dollars.describe('Supplies and renewal reserve, per year.'),
  topDressInches: inches.describe('Compost on established ground each year.'),
  provenance,
});

/** Care of each component, per 1,000 square feet and year. */
export const careSchema = byComponent(careCoefficientsSchema);
