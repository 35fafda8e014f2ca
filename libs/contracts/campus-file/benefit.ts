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
  ]),
  weightPoints: z.number().min(0).max(100).describe('Weights of all criteria add up to 100.'),
  reference: z.number().gt(0).describe('The measure that earns the whole weight.'),
  whenUnknown: z.number().min(0).describe('Measure used while the fact is unknown.'),
  provenance,
});

export const benefitSchema = z.strictObject({
  criteria: z.array(benefitCriterionSchema).min(1).max(40),
  discountPercent: z.number().min(0).max(50).describe('Yearly discount of benefit.'),
});
