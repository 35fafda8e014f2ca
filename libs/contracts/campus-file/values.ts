import { z } from 'zod';

/** Says why a bare year is refused; the problem translator recognizes it. */
export const FISCAL_YEAR_MESSAGE = 'is not a fiscal year such as "FY2028"';
/** Says what a date looks like; the problem translator recognizes it. */
export const DATE_MESSAGE = 'is not a date such as "2027-09-15"';

/**
 * A fiscal year named by the calendar year in which it ends, for example `FY2028`. A bare 2028 is
 * refused, since it does not say whether a calendar year or a fiscal year is meant.
 */
export const fiscalYearText = z
  .string({ error: (issue) => (issue.input === undefined ? undefined : FISCAL_YEAR_MESSAGE) })
  .regex(/^FY(19|20)\d\d$/, { error: FISCAL_YEAR_MESSAGE })
  .describe('Fiscal year, named by the calendar year in which it ends: FY2028 ends in 2028.');

/** An ISO date that exists in the calendar, for example `2027-09-15`. */
export const isoDate = z.iso
  .date({ error: (issue) => (issue.input === undefined ? undefined : DATE_MESSAGE) })
  .regex(/^(19|20)/, { error: DATE_MESSAGE })
  .describe('ISO date, for example 2027-09-15.');

/** Identifier that other records refer to. */
export const id = z
  .string()
  .regex(/^[A-Za-z0-9][A-Za-z0-9._-]{0,59}$/)
  .describe('Identifier: letters, digits, dot, dash or underscore, 60 at most.');

/** Identifier of a fund, or of the pot that keeps its care share. */
export const fundId = z
  .string()
  .regex(/^[A-Za-z0-9][A-Za-z0-9._-]{0,79}$/)
  .describe('Identifier of a fund, or of its care share.');

export const text = z.string().min(1).max(400);
export const longText = z.string().max(4000);

export const dollars = z.number().min(0).max(1_000_000_000).describe('US dollars.');
export const hours = z.number().min(0).max(1_000_000).describe('Hours.');
export const cubicYards = z.number().min(0).max(100_000).describe('Cubic yards.');
export const inches = z.number().min(0).max(48).describe('Inches, loose depth.');
export const squareFeet = z.number().min(1).max(50_000_000).describe('Square feet.');
export const share = z.number().min(0).max(1).describe('Share, 0 to 1.');
export const percent = z.number().min(0).max(100).describe('Percent, 0 to 100.');
export const wholeCount = z.int().min(0).max(100_000);
export const month = z.int().min(1).max(12).describe('Month, 1 (January) to 12 (December).');

export const UNKNOWN_TEXT = 'unknown';

/** A fact that may be `"unknown"`, which is a value of its own and never zero. */
export function orUnknown<T extends z.ZodType>(fact: T) {
  return z.union([fact, z.literal(UNKNOWN_TEXT)]);
}

/** Every record of a kind, or those listed by id. */
export const anyOrIds = z.union([z.literal('any'), z.array(id).min(1).max(500)]);

/** Where a number comes from; it is printed beside the number. */
export const provenance = z.strictObject({
  basis: z.enum(['published', 'common practice', 'judgement', 'measured', 'campus record']),
  source: z.string().min(1).max(1000),
});

/** A coefficient that was measured here, in place of a planning default. */
export const measuredSchema = z.strictObject({
  coefficient: text.describe('Name of the default that it replaces, for example density.compost.'),
  value: z.number(),
  unit: text.describe('Unit of the value: that of the default, or its metric one.'),
  source: text.describe('How it was found, and where that is on record.'),
  date: isoDate,
});

export const measuredList = z
  .array(measuredSchema)
  .max(300)
  .optional()
  .describe('Measured values that go before the planning defaults.');

/** Amounts by season id; a season left out has none. */
export function bySeason<T extends z.ZodType>(amount: T) {
  return z.record(id, amount);
}
