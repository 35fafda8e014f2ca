import { z } from 'zod';
import { id } from '../campus-file/values.js';
import { timestamp } from './common.js';

const words = z.string().trim().min(1).max(4000);

const decision = {
  site: id,
  year: z.string().min(1).max(20).meta({ description: 'Fiscal year, such as FY28' }),
  verdict: z.enum(['approved', 'put off', 'refused']),
  decidedBy: words.meta({ description: 'Who decided, by name or office' }),
  reason: words,
  dissent: z.string().max(4000).meta({ description: 'Who disagreed and why; empty: nobody' }),
};

export const decisionBody = z.strictObject(decision).meta({ id: 'NewDecision' });

export const decisionReply = z
  .strictObject({
    ...decision,
    id: z.uuid(),
    campusId: z.uuid(),
    planId: z.uuid(),
    decidedAt: timestamp,
  })
  .meta({ id: 'Decision' });

export const decisionListReply = z
  .strictObject({ decisions: z.array(decisionReply) })
  .meta({ id: 'DecisionList' });

export type DecisionBody = z.infer<typeof decisionBody>;
export type DecisionReply = z.infer<typeof decisionReply>;
