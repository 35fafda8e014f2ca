import { z } from 'zod';
import { id, provenance, text } from './values.js';

export const benefitCriterionSchema = z.strictObject({
  id,
  name: text,
  measure: z.enum([
    'walkers-per-day',
    'food-area',
    'habitat-area',
    'rain-garden-area',
    'converted-area',
    'slope-mowing-removed',
    'teaching',
    'care-avoided',
  ]),
  weightPoints: z.number().min(0).max(100).describe('Weights of all criteria add up to 100.'),
  reference: z.number().gt(0).describe('The measure that earns the whole weight.'),
  whenUnknown: z.number().min(0).describe('Measure used while the fact is unknown.'),
  provenance,
});

/** A position on benefit: points for each criterion, 100 together. */
export const benefitPositionSchema = z.strictObject({
  id,
  name: text,
  weightPoints: z.record(id, z.number().min(0).max(100)).describe('Points by criterion id.'),
});

export const benefitSchema = z.strictObject({
  criteria: z.array(benefitCriterionSchema).min(1).max(40),
  discountPercent: z.number().min(0).max(50).describe('Yearly discount of benefit.'),
  positions: z
    .array(benefitPositionSchema)
    .max(20)
    .optional()
    .describe('Positions of the campus beside the ready ones.'),
  position: id
    .optional()
    .describe(
      'The position that is planned for: an own one, teaching-first, kitchen-first or least-care. Left out: the weights of the criteria.',
    ),
  strandedPointsPer1000Dollars: z
    .number()
    .min(0)
    .max(1000)
    .optional()
    .describe('Points lost for each $1,000 that works are expected to waste. Left out: 1.'),
});
