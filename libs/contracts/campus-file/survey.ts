import { z } from 'zod';
import { positionSchema } from './geometry.js';
import { orUnknown, text } from './values.js';

/** A tree whose roots may reach into the site. */
export const treeSchema = z.strictObject({
  name: text,
  position: positionSchema.describe('Longitude and latitude in degrees.'),
  trunkInches: z.number().min(0.1).max(400).describe('Trunk diameter at 4.5 ft, inches.'),
});

const utilityLineSchema = z.strictObject({
  kind: text,
  owner: text,
  depthInches: orUnknown(z.number().min(0).max(1200)).describe('Depth of cover, inches.'),
});

const yesOrNo = orUnknown(z.boolean()).optional();
const measured = (most: number, unit: string) =>
  orUnknown(z.number().min(0).max(most)).optional().describe(unit);

/** What a walk, a locate or an office has found out; what is left out is unknown. */
export const surveySchema = z.strictObject({
  truckWidthFeet: measured(200, 'Narrowest width on the way of a truck, feet.'),
  groundBearsTruck: yesOrNo.describe('Vaults and cellars under that way bear a loaded truck.'),
  arboristAgreed: yesOrNo.describe('An arborist has seen the design and agreed.'),
  utilityLines: orUnknown(z.array(utilityLineSchema).max(100))
    .optional()
    .describe('Lines in records or found by the locator; an empty list: none was found.'),
  marksInForce: yesOrNo.describe('Marks are on the ground, with a ticket in force.'),
  digInches: measured(600, 'Deepest disturbance of the work, inches; 0 where nothing is dug.'),
  route: z
    .strictObject({
      clearWidthInches: measured(1200, 'Clear width, inches.'),
      passingEveryFeet: measured(10_000, 'Feet between places to pass; 0 where 60 in wide.'),
      runningSlopePercent: measured(200, 'Steepest running slope, percent.'),
      crossSlopePercent: measured(200, 'Steepest cross slope, percent.'),
      firmAndStable: yesOrNo.describe('Firm and stable when tested.'),
    })
    .optional()
    .describe('The accessible route to and through the site.'),
});
