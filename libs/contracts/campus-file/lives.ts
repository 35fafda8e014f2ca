import { z } from 'zod';
import { CHANGE_AGES } from '#domain/later-change.js';
import { anyOrIds, fiscalYearText, id, isoDate, provenance, text } from './values.js';

const age = z.int().min(1).max(100).describe('Age of the site in years, from its first planting.');

/** What a site becomes, when, in which halves, and what becomes of it later. */
export const placementSchema = z.strictObject({
  year: fiscalYearText.describe('Fiscal year in which the site, or its first half, is prepared.'),
  site: id,
  buildType: id,
  secondHalf: fiscalYearText
    .optional()
    .describe('Fiscal year in which the second half is prepared. Left out: the whole at once.'),
  change: z
    .strictObject({ id, age })
    .optional()
    .describe('Later change of the campus, and the age at which it is made. Left out: none.'),
});

export const hireSchema = z.strictObject({
  year: fiscalYearText,
  position: id,
  count: z.int().min(1).max(100_000),
});

/** A way in which a built site may be simplified or returned to lawn. */
export const laterChangeSchema = z.strictObject({
  id,
  name: text,
  buildType: id
    .optional()
    .describe('Build type that it becomes. Left out: it is returned to lawn.'),
  from: anyOrIds.describe('Build types that may be changed so.'),
  ages: z
    .array(z.union(CHANGE_AGES.map((each) => z.literal(each))))
    .min(1)
    .max(CHANGE_AGES.length)
    .describe(`Ages in years at which it may be made: some of ${CHANGE_AGES.join(', ')}.`),
  dollarsPerSqFt: z.number().min(0).max(1000).describe('Cost of the change; care money pays it.'),
  hoursPer1000SqFt: z
    .number()
    .min(0)
    .max(1000)
    .describe('Hours of planting work that the change takes, in the planting season.'),
  provenance,
});

const weight = z.int().min(0).max(1000).optional();

/** The plan that the campus was last told of. */
export const publishedSchema = z.strictObject({
  name: text,
  date: isoDate,
  frozenThrough: fiscalYearText
    .optional()
    .describe('Last fiscal year in which nothing is planned otherwise. Left out: none is frozen.'),
  announcedWeight: weight.describe('Weight of a changed site that was announced. Left out: 1.'),
  otherWeight: weight.describe('Weight of any other changed site. Left out: 1.'),
  placements: z
    .array(
      placementSchema.extend({
        announced: z
          .boolean()
          .optional()
          .describe('True: people outside the program were told of it. Left out: they were not.'),
      }),
    )
    .max(1000),
  hires: z.array(hireSchema).max(5000),
});
