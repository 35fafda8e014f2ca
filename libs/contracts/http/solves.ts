import { z } from 'zod';
import { problemSchema, timestamp } from './common.js';

/** Four hours, as `longestSolveSeconds` of the planning lib. */
const longestSolve = 4 * 60 * 60;

const limits = z
  .strictObject({
    seconds: z
      .number()
      .gt(0)
      .nullable()
      .meta({ description: 'Null: a plan that came in by a bundle states none' }),
    work: z.number().gt(0).nullable(),
    gap: z.number().min(0).max(1).nullable().meta({ description: 'Share: 0.03 is 3 percent' }),
  })
  .meta({ id: 'SolveLimits' });

export const endingSchema = z
  .enum([
    'proven',
    'time-limit',
    'work-limit',
    'cancelled',
    'time-limit-without-plan',
    'work-limit-without-plan',
    'cancelled-without-plan',
    'no-plan',
  ])
  .meta({ id: 'Ending' });

export const solveWishBody = z
  .strictObject({
    campusVersion: z
      .int()
      .min(1)
      .max(2_147_483_647)
      .optional()
      .meta({ description: 'Left out: the newest version' }),
    seconds: z.number().gt(0).max(longestSolve).default(60),
    work: z.number().gt(0).nullable().default(null),
    gap: z.number().min(0).max(1).nullable().default(null),
    seed: z.int().min(0).max(2_147_483_647).default(1),
    startFromPlan: z
      .uuid()
      .optional()
      .meta({ description: 'A plan of this campus to begin from; left out: from nothing' }),
  })
  .meta({ id: 'SolveWish' });

const progress = z
  .strictObject({
    elapsedSeconds: z.number(),
    bestObjective: z.number().nullable(),
    bound: z.number().nullable(),
    gap: z.number().nullable().meta({ description: 'Share: 0.03 is 3 percent' }),
    tier: z.string().nullable(),
    message: z.string(),
  })
  .meta({ id: 'SolveProgress' });

const conflictMember = z
  .strictObject({ kind: z.enum(['commitment', 'limit']), id: z.string(), name: z.string() })
  .meta({ id: 'ConflictMember' });

export const solveReply = z
  .strictObject({
    id: z.uuid(),
    campusId: z.uuid(),
    campusVersion: z.int().min(1),
    seed: z.int(),
    limits,
    startFromPlan: z.uuid().nullable(),
    broughtPlan: z.string().nullable().meta({
      description:
        'A plan of this name in a bundle is checked and kept; null: the campus is solved',
    }),
    state: z.enum(['queued', 'solving', 'done', 'failed', 'cancelled']),
    progress: progress.nullable(),
    attempts: z.int().min(0),
    cancelWanted: z.boolean(),
    planId: z.uuid().nullable(),
    ending: endingSchema.nullable(),
    conflict: z.array(conflictMember).meta({ description: 'What cannot all hold: `no-plan` only' }),
    problem: problemSchema.nullable(),
    requestedAt: timestamp,
    startedAt: timestamp.nullable(),
    finishedAt: timestamp.nullable(),
  })
  .meta({ id: 'Solve' });

export const solveListReply = z
  .strictObject({ solves: z.array(solveReply) })
  .meta({ id: 'SolveList' });

export { limits as solveLimitsSchema };
export type SolveReply = z.infer<typeof solveReply>;
export type SolveWish = z.infer<typeof solveWishBody>;
