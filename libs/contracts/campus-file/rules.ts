import { z } from 'zod';
import { taskClass } from './labor.js';
import {
  anyOrIds,
  fiscalYearText,
  id,
  isoDate,
  longText,
  percent,
  squareFeet,
  text,
  wholeCount,
} from './values.js';

/** Works that take ground away for a time. */
export const constructionSchema = z.strictObject({
  id,
  name: text,
  kind: text,
  sites: z.array(id).min(1),
  from: fiscalYearText,
  to: fiscalYearText.describe('Last fiscal year of the works.'),
  certaintyPercent: percent,
  source: text,
});

export const precedenceSchema = z.strictObject({
  before: id,
  after: id,
  yearsApart: z.int().min(0).max(50),
  reason: text,
});

export const exclusiveGroupSchema = z.strictObject({
  id,
  sites: z.array(id).min(2),
  reason: text,
});

const returnedCounts = z
  .literal(true)
  .optional()
  .describe('A site that is returned to lawn still counts. Left out: it does not.');

export const commitmentTestSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('sites-each-year'),
    count: wholeCount,
    from: fiscalYearText,
    to: fiscalYearText,
    countsFromSqFt: squareFeet.describe('Smallest area that counts as a site.'),
    returnedCounts,
  }),
  z.strictObject({
    kind: z.literal('named-site'),
    site: id,
    by: fiscalYearText.describe('Prepared no later than this fiscal year.'),
    buildTypes: anyOrIds,
    returnedCounts,
  }),
  z.strictObject({
    kind: z.literal('area'),
    areaSqFt: squareFeet,
    by: fiscalYearText,
    returnedCounts,
  }),
  z.strictObject({ kind: z.literal('no-new-positions-before'), year: fiscalYearText }),
  z.strictObject({
    kind: z.literal('no-unserved-care'),
    classes: z.array(taskClass).min(1),
    seasons: z.union([z.literal('all'), z.array(id).min(1)]),
  }),
  z.strictObject({ kind: z.literal('only-build-types'), buildTypes: z.array(id).min(1) }),
  z.strictObject({ kind: z.literal('zone-balance'), leastPerZone: wholeCount, returnedCounts }),
]);

/** A promise with an owner, a date and a test, in order of rank. */
export const commitmentSchema = z.strictObject({
  id,
  name: text,
  strength: z.enum(['binding', 'intended', 'aspiration']),
  test: commitmentTestSchema,
  saidBy: text,
  saidTo: text,
  date: isoDate,
  document: longText.describe('Where it is written. A binding commitment must have one.'),
  public: z.boolean(),
  points: z
    .number()
    .min(0)
    .max(1000)
    .optional()
    .describe('Benefit points of an aspiration kept in full. Left out: 0.'),
});

export const handPlacementSchema = z.strictObject({
  site: id,
  kind: z.enum(['fixed', 'forbidden']),
  year: fiscalYearText.optional().describe('Left out on forbidden: no year at all.'),
  buildType: id.optional(),
  reason: text,
});
