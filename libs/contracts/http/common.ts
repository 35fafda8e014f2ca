import { z } from 'zod';

export const idParams = z.strictObject({ id: z.uuid() });

export const timestamp = z.iso.datetime().meta({ description: 'UTC' });

/** A document whose own schema is published elsewhere, or that is only read by the page. */
export const jsonObject = z.record(z.string(), z.unknown());

export const problemSchema = z
  .strictObject({
    code: z.string().meta({ description: 'Stable and machine readable' }),
    record: z.string().meta({ description: 'The record at fault, as a reader would name it' }),
    field: z.string().meta({ description: 'Path within the record; empty: the whole record' }),
    value: z.unknown().meta({ description: 'The value found there; null where there is none' }),
    problem: z.string().meta({ description: 'What is wrong, in one sentence' }),
    remedy: z.string().meta({ description: 'What to do about it, in one sentence' }),
    severity: z.enum(['error', 'warning']),
  })
  .meta({ id: 'Problem' });

/** What two people made of one record; null: it is not there. */
const editVersions = z.strictObject({
  base: z.unknown().meta({ description: 'As it was when the change began' }),
  current: z.unknown().meta({ description: 'As somebody else has saved it since' }),
});

/** RFC 9457, with this program's own members `code` and `problems`. */
export const problemReplySchema = z
  .strictObject({
    type: z.string(),
    title: z.string(),
    status: z.int().min(400).max(599),
    detail: z.string(),
    code: z.string(),
    currentVersion: z.int().min(1).optional(),
    versions: editVersions.optional(),
    problems: z.array(problemSchema).optional(),
  })
  .meta({ id: 'ProblemReply' });

export type ProblemReply = z.infer<typeof problemReplySchema>;
