import { z } from 'zod';
import { problemSchema } from './common.js';

/** What an import would do, or has done, with one record. */
export const importOutcome = z
  .enum(['unchanged', 'new', 'changed', 'removed', 'rejected'])
  .meta({ id: 'ImportOutcome' });

const importChange = z
  .strictObject({
    field: z.string().meta({ description: 'The field as the imported file names it' }),
    from: z.string().meta({ description: 'Empty: nothing was there' }),
    to: z.string(),
  })
  .meta({ id: 'ImportChange' });

const importRow = z
  .strictObject({
    place: z.string().meta({ description: 'Where in the file, such as `row 7` or `feature 3`' }),
    record: z.string().meta({ description: 'The record as a reader would name it' }),
    outcome: importOutcome,
    changes: z.array(importChange),
    problems: z
      .array(problemSchema)
      .meta({ description: 'Why it is rejected, or what to look at' }),
  })
  .meta({ id: 'ImportRow' });

const importPlan = z
  .strictObject({
    name: z.string().meta({ description: 'As the bundle names it' }),
    outcome: z
      .enum(['new', 'unchanged', 'rejected'])
      .meta({ description: 'new: it is checked and then kept; unchanged: it is here already' }),
    problems: z.array(problemSchema).meta({ description: 'Why it is rejected' }),
  })
  .meta({ id: 'ImportPlan' });

const count = z.int().min(0);

export const importReport = z
  .strictObject({
    format: z.enum(['csv', 'xlsx', 'geojson', 'bundle', 'campus', 'unknown']),
    counts: z.strictObject({
      unchanged: count,
      new: count,
      changed: count,
      removed: count,
      rejected: count,
    }),
    /** An import is of one piece: nothing is saved while a row is rejected. */
    canApply: z.boolean().meta({ description: 'No row is rejected, and the campus stays sound' }),
    rows: z.array(importRow),
    plans: z.array(importPlan).meta({
      description:
        'Plans that a bundle holds. One that is rejected keeps nothing else from being saved.',
    }),
    problems: z.array(problemSchema).meta({ description: 'Problems of the file as a whole' }),
  })
  .meta({ id: 'ImportReport' });

export const importPreviewReply = z
  .strictObject({
    campusVersion: z.int().min(1),
    token: z.string().meta({ description: 'Of this file and this version; needed to apply it' }),
    report: importReport,
  })
  .meta({ id: 'ImportPreview' });

export const importAppliedReply = z
  .strictObject({
    campusVersion: z.int().min(1).meta({ description: 'The same as before if nothing changed' }),
    report: importReport,
    broughtPlans: z
      .array(z.strictObject({ name: z.string(), solveId: z.uuid() }))
      .meta({ description: 'Plans that are being checked; each can be followed like a solve' }),
  })
  .meta({ id: 'ImportApplied' });

export const importTokenParams = z.strictObject({
  id: z.uuid(),
  token: z.string().regex(/^[0-9a-f]{64}$/),
});

export type ImportReport = z.infer<typeof importReport>;
export type ImportPlan = z.infer<typeof importPlan>;
export type ImportRow = z.infer<typeof importRow>;
export type ImportChange = z.infer<typeof importChange>;
