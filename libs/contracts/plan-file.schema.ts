import { z } from 'zod';
import { COMPOST_GRADES } from '#domain/compost.js';
import { COST_LINES } from '#domain/money.js';
import { TASK_CLASSES } from '#domain/labor.js';
import { hireSchema, placementSchema } from './campus-file/lives.js';
import { fiscalYearText, fundId, id } from './campus-file/values.js';

export const PLAN_FILE_FORMAT = 'campus-plan/plan';

/** One season of one fiscal year: the year and the season id. */
const seasonOfYear = { year: fiscalYearText, season: id };
const hours = z.number().min(0).max(10_000_000).describe('Hours, two decimals.');
const dollars = z.number().min(0).max(100_000_000_000).describe('US dollars, two decimals.');
const cubicYards = z.number().min(0).max(1_000_000).describe('Cubic yards, two decimals.');
const count = z.int().min(1).max(100_000);

export const workDaysHeldSchema = z.strictObject({ year: fiscalYearText, workDay: id, count });
export const purchaseSchema = z.strictObject({
  ...seasonOfYear,
  grade: z.enum(COMPOST_GRADES).optional().describe('Left out: certified.'),
  cubicYards: z.int().min(1).max(1_000_000).describe('Whole cubic yards bought.'),
});
export const laborEntrySchema = z.strictObject({
  ...seasonOfYear,
  source: id.describe('Pool, work day or position.'),
  taskClass: z.enum(TASK_CLASSES),
  hours,
});
export const unservedEntrySchema = z.strictObject({
  ...seasonOfYear,
  taskClass: z.enum(TASK_CLASSES),
  hours,
});
export const spendEntrySchema = z.strictObject({
  year: fiscalYearText,
  fund: fundId,
  inflow: z.int().min(0).max(10_000).describe("Place in the fund's list of inflows, from 0."),
  line: z.enum(COST_LINES),
  site: id.optional().describe('The site paid for, on build and care.'),
  dollars,
  repaidBy: z
    .strictObject({ fund: fundId, inflow: z.int().min(0).max(10_000) })
    .optional()
    .describe('The award of a reimbursable grant that pays it back to the inflow. Left out: none.'),
});
export const compostEntrySchema = z.strictObject({
  ...seasonOfYear,
  givenAwayCubicYards: cubicYards.describe('Of both grades, two decimals.'),
  stockCubicYards: cubicYards.describe('Of both grades at the end of the season, two decimals.'),
  certified: z
    .strictObject({ givenAwayCubicYards: cubicYards, stockCubicYards: cubicYards })
    .optional()
    .describe('What of it is certified. Left out: all, on a campus without the other grade.'),
});

export const planPartSchema = z.strictObject({
  placements: z.array(placementSchema).max(1000),
  hires: z.array(hireSchema).max(5000),
  workDays: z.array(workDaysHeldSchema).max(10_000),
  compostPurchases: z.array(purchaseSchema).max(10_000),
  labor: z.array(laborEntrySchema).max(200_000),
  unserved: z.array(unservedEntrySchema).max(20_000),
  spending: z.array(spendEntrySchema).max(500_000),
  compost: z.array(compostEntrySchema).max(5000),
});

/** One tier of what the plan was judged by; see the field of the same name in a solve report. */
export const tierSchema = z.strictObject({
  name: z.string().min(1),
  unit: z.string(),
  sense: z.enum(['min', 'max']),
  value: z.number(),
  bound: z.number().nullable(),
  gap: z.number().min(0).nullable(),
  tolerance: z.number().min(0),
  proven: z.boolean(),
});

export const solverSchema = z.strictObject({
  name: z.string().min(1),
  version: z.string().min(1),
  seed: z.int().min(0),
  limit: z
    .discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('time'), seconds: z.number().gt(0) }),
      z.strictObject({ kind: z.literal('work'), units: z.int().min(1) }),
    ])
    .describe('What could end the solve before it was proven.'),
});

/** A saved plan: what was decided, how it is staffed and paid, and what is known of how good it is. */
export const planFileSchema = z.strictObject({
  $schema: z.string().optional(),
  format: z.literal(PLAN_FILE_FORMAT),
  formatVersion: z.literal(1),
  campus: z.strictObject({
    id,
    name: z.string().min(1),
    digest: z
      .string()
      .regex(/^sha-256:[0-9a-f]{64}$/)
      .describe('Digest of the canonical JSON text of the campus file that was planned.'),
    position: id
      .optional()
      .describe('Position on benefit that was planned for. Left out: the one of the campus file.'),
  }),
  solver: solverSchema,
  ending: z.enum(['proven', 'time-limit', 'work-limit', 'cancelled']),
  tiers: z.array(tierSchema).max(200),
  plan: planPartSchema,
});

export type PlanFile = z.infer<typeof planFileSchema>;
export type PlanPart = PlanFile['plan'];
