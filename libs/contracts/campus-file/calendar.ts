import { z } from 'zod';
import { fiscalYearText, id, isoDate, month, text } from './values.js';

export const seasonSchema = z.strictObject({
  id,
  months: z.array(month).min(1).max(12).describe('In calendar order of the season: 12, 1, 2.'),
});

export const termSchema = z.strictObject({ name: text, starts: isoDate, ends: isoDate });

/** The time that a campus plans in. */
export const calendarSchema = z.strictObject({
  fiscalYearStartMonth: month,
  firstYear: fiscalYearText,
  horizonYears: z.int().min(1).max(50).describe('Fiscal years in which sites may be built.'),
  planningDate: isoDate.describe('The day from which lead times count.'),
  priceYear: fiscalYearText.describe('The fiscal year whose prices this file states.'),
  seasons: z
    .array(seasonSchema)
    .min(2)
    .max(12)
    .describe('In the order in which they open within a fiscal year; they partition the year.'),
  prepareSeason: id.describe('Season in which a site is sheet mulched.'),
  plantSeason: id.describe('Season in which a site is planted.'),
  terms: z.array(termSchema).max(400).describe('Days in which classes are in session.'),
});
