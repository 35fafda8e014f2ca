import { z } from 'zod';
import { jsonObject, timestamp } from './common.js';
import { endingSchema, solveLimitsSchema } from './solves.js';

const summary = {
  id: z.uuid(),
  campusId: z.uuid(),
  campusVersion: z.int().min(1),
  seed: z.int(),
  solverVersion: z.string(),
  limits: solveLimitsSchema,
  ending: endingSchema,
  origin: z
    .enum(['solved', 'bundle'])
    .meta({ description: 'Solved here, or brought in with a bundle and verified' }),
  solvedAt: timestamp.meta({ description: 'When it was stored: solved, or brought in' }),
};

export const planSummaryReply = z.strictObject(summary).meta({ id: 'PlanSummary' });

export const planListReply = z
  .strictObject({ plans: z.array(planSummaryReply) })
  .meta({ id: 'PlanList' });

export const planReply = z
  .strictObject({ ...summary, file: jsonObject.meta({ description: 'The plan file' }) })
  .meta({ id: 'StoredPlan' });

export const overviewReply = jsonObject.meta({ id: 'PlanOverview' });

const breach = z
  .strictObject({ rule: z.string(), record: z.string(), message: z.string() })
  .meta({ id: 'Breach' });

export const verdictReply = z
  .strictObject({ verified: z.boolean(), breaches: z.array(breach) })
  .meta({ id: 'PlanVerdict' });

export type PlanSummaryReply = z.infer<typeof planSummaryReply>;
export type PlanReply = z.infer<typeof planReply>;
