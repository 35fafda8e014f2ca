import { z } from 'zod';
import { percent } from './values.js';

/** Weight of what makes a place suitable; a criterion left out has none. */
export const suitabilityWeightsSchema = z.strictObject({
  visibility: percent.optional().describe('People who walk past.'),
  sun: percent.optional().describe('Hours of sun.'),
  kitchen: percent.optional().describe('Nearness to a kitchen.'),
  water: percent.optional().describe('Nearness to water.'),
  soil: percent.optional().describe('Organic matter of the soil.'),
  truck: percent.optional().describe('Whether a truck reaches it.'),
  zone: percent.optional().describe('How few sites its zone has.'),
});
