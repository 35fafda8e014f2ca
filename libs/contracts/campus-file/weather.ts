import { z } from 'zod';
import { isoDate, squareFeet, text } from './values.js';

const month = z.strictObject({
  evapotranspirationInches: z.number().min(0).max(30).describe('Reference, inches in the month.'),
  rainInches: z.number().min(0).max(60).describe('Inches in the month.'),
});

/** Evapotranspiration and rain: what irrigation and rain tanks are reckoned from. */
export const weatherSchema = z.strictObject({
  source: text.describe('Station and years.'),
  months: z.array(month).length(12).describe('Twelve months, January first.'),
  dailyRain: z
    .strictObject({
      firstDay: isoDate,
      inches: z.array(z.number().min(0).max(40)).min(28).max(3660).describe('Inches, day by day.'),
    })
    .optional()
    .describe('Rain of days in a row, for the balance of tanks.'),
});

/** A tank that a roof fills; its water is not for food plants without treatment. */
export const rainTankSchema = z.strictObject({
  gallons: z.number().min(1).max(1_000_000).describe('US gallons.'),
  openingGallons: z.number().min(0).max(1_000_000).describe('In it on the first day.'),
  roofSqFt: squareFeet,
  firstFlushInches: z.number().min(0).max(2).describe('Turned away of each day’s rain, inches.'),
});
