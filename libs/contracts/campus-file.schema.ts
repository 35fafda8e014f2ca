import { z } from 'zod';
import { benefitSchema } from './campus-file/benefit.js';
import { buildTypeSchema, careSchema } from './campus-file/build-types.js';
import { calendarSchema } from './campus-file/calendar.js';
import { compostSchema } from './campus-file/compost.js';
import { laterChangeSchema, publishedSchema } from './campus-file/lives.js';
import { poolSchema, positionSchema, workDaySchema } from './campus-file/labor.js';
import { escalationSchema, fundSchema, standingCostSchema } from './campus-file/money.js';
import {
  commitmentSchema,
  constructionSchema,
  exclusiveGroupSchema,
  handPlacementSchema,
  precedenceSchema,
} from './campus-file/rules.js';
import { candidateSiteSchema, existingSiteSchema, zoneSchema } from './campus-file/sites.js';
import { suitabilityWeightsSchema } from './campus-file/suitability.js';
import { id, isoDate, measuredList, percent, text } from './campus-file/values.js';
import { weatherSchema } from './campus-file/weather.js';

export const CAMPUS_FILE_FORMAT = 'campus-plan/campus';

/** Everything that a plan is made from, as one JSON document. Units stand in the field names. */
export const campusFileSchema = z.strictObject({
  $schema: z.string().optional(),
  format: z.literal(CAMPUS_FILE_FORMAT),
  formatVersion: z.literal(1),
  id,
  name: text,
  program: text.describe('Name of the landscape program.'),
  dataDate: isoDate.describe('The day the data was last confirmed.'),
  calendar: calendarSchema,
  zones: z.array(zoneSchema).min(1).max(100),
  candidateSites: z.array(candidateSiteSchema).max(500),
  existingSites: z.array(existingSiteSchema).max(500),
  buildTypes: z.array(buildTypeSchema).min(1).max(50),
  care: careSchema,
  pools: z.array(poolSchema).max(100),
  workDays: z.array(workDaySchema).max(100),
  positions: z.array(positionSchema).max(50),
  funds: z.array(fundSchema).max(200),
  standingCosts: z.array(standingCostSchema).max(100),
  escalationPercent: escalationSchema,
  compost: compostSchema,
  materialWastePercent: percent.describe('Extra compost and chips ordered for losses.'),
  construction: z.array(constructionSchema).max(200),
  hardAtCertaintyPercent: percent.describe('Works at least this certain bar building outright.'),
  paybackYears: z.int().min(0).max(50).describe('Years in which a site repays its capital.'),
  precedence: z.array(precedenceSchema).max(200),
  exclusiveGroups: z.array(exclusiveGroupSchema).max(100),
  commitments: z.array(commitmentSchema).max(100).describe('In order of rank.'),
  benefit: benefitSchema,
  handPlacements: z.array(handPlacementSchema).max(500),
  laterChanges: z
    .array(laterChangeSchema)
    .max(50)
    .optional()
    .describe('Ways in which sites may be simplified or returned. Left out: none.'),
  published: publishedSchema.optional().describe('The plan that the campus was last told of.'),
  weather: weatherSchema.optional().describe('Left out: not recorded, and irrigation unknown.'),
  suitabilityWeightsPercent: suitabilityWeightsSchema
    .optional()
    .describe('Weight of each suitability criterion; they total 100. Left out: the defaults.'),
  overrides: measuredList,
});

export type CampusFile = z.infer<typeof campusFileSchema>;
