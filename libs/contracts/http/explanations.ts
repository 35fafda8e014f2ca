import { z } from 'zod';
import { id } from '../campus-file/values.js';
import { jsonObject, problemSchema, timestamp } from './common.js';

const MOST_SECONDS = 600;

/** What can be asked of a plan. */
export const questionSchema = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('next-site') }),
    z.strictObject({ kind: z.literal('limits') }),
    z.strictObject({ kind: z.literal('promises') }),
    z.strictObject({ kind: z.literal('additions') }),
    z.strictObject({
      kind: z.literal('futures'),
      futures: z.int().min(1).max(10_000).default(1000).meta({ description: 'Sampled futures' }),
      seed: z.int().min(0).max(4_294_967_295).default(1),
    }),
    z.strictObject({
      kind: z.literal('why'),
      site: id,
      year: z
        .int()
        .min(1900)
        .max(2200)
        .optional()
        .meta({ description: 'Year in which the fiscal year ends' }),
    }),
  ])
  .meta({ id: 'Question' });

/** What can be asked of a campus alone, which need not have a plan. */
export const campusQuestionSchema = z
  .strictObject({ kind: z.literal('conflicts') })
  .meta({ id: 'CampusQuestion' });

const seconds = z
  .number()
  .positive()
  .max(MOST_SECONDS)
  .default(28)
  .meta({ description: 'Time to answer in; what it does not reach is said' });

export const explanationBody = z
  .strictObject({ question: questionSchema, seconds })
  .meta({ id: 'NewExplanation' });

export const campusExplanationBody = z
  .strictObject({ question: campusQuestionSchema, seconds })
  .meta({ id: 'NewCampusExplanation' });

export const explanationReply = z
  .strictObject({
    id: z.uuid(),
    planId: z.uuid().nullable().meta({ description: 'Null: it is asked of a campus' }),
    campusId: z.uuid().nullable().meta({ description: 'Null: it is asked of a plan' }),
    campusVersion: z.int().nullable(),
    question: z.union([questionSchema, campusQuestionSchema]),
    seconds: z.number(),
    state: z.enum(['queued', 'working', 'done', 'failed']),
    progress: z.strictObject({ message: z.string(), share: z.number() }).nullable(),
    answer: jsonObject
      .nullable()
      .meta({ description: 'As the command of the same name prints it with --json' }),
    problem: problemSchema.nullable(),
    attempts: z.int(),
    askedAt: timestamp,
    finishedAt: timestamp.nullable(),
  })
  .meta({ id: 'Explanation' });

export const explanationListReply = z
  .strictObject({ explanations: z.array(explanationReply) })
  .meta({ id: 'ExplanationList' });

export type ExplanationBody = z.infer<typeof explanationBody>;
export type CampusExplanationBody = z.infer<typeof campusExplanationBody>;
export type ExplanationReply = z.infer<typeof explanationReply>;
export type QuestionBody = z.infer<typeof questionSchema>;
