import { z } from 'zod';
import { polygonSchema } from './geometry.js';
import { surveySchema, treeSchema } from './survey.js';
import { rainTankSchema } from './weather.js';
import {
  fiscalYearText,
  id,
  isoDate,
  longText,
  measuredList,
  orUnknown,
  share,
  squareFeet,
  text,
} from './values.js';

export const gateSchema = z.strictObject({
  kind: z.enum([
    'contamination',
    'utilities',
    'construction',
    'root-protection',
    'slope',
    'access',
    'heritage',
    'flood-or-wetland',
    'fire-lane',
    'structure',
    'accessibility',
  ]),
  status: z.enum(['pass', 'fail', 'unknown']),
  note: longText.describe('What was found, or what is not known.'),
  bars: z
    .union([z.literal('all'), z.literal('edible'), z.array(id).min(1)])
    .describe('Build types that it bars while it is not passed.'),
  clearedBy: longText.describe('What would clear it, and who decides.'),
  plannedClearFrom: fiscalYearText
    .optional()
    .describe('For an unknown gate: the first fiscal year for which the campus plans on a pass.'),
});

export const evidenceSchema = z.strictObject({
  fact: text,
  value: text,
  method: text,
  observer: text,
  date: isoDate,
  expires: isoDate.optional(),
});

const feet = z.number().min(0).max(30_000).describe('Feet.');

/** What is known of the ground; each fact may be `"unknown"`. */
export const factsSchema = z.strictObject({
  cover: orUnknown(text),
  soil: orUnknown(text),
  ph: orUnknown(z.number().min(0).max(14)),
  organicMatterPercent: orUnknown(z.number().min(0).max(100)),
  leadMgPerKg: orUnknown(z.number().min(0).max(100_000)).describe(
    'Total lead, mg/kg: a screening result, not a clearance.',
  ),
  slopePercent: orUnknown(z.number().min(0).max(100)),
  sunHours: orUnknown(z.number().min(0).max(16)).describe(
    'Mean daily hours of sun from 1 May to 15 September.',
  ),
  walkersPerDay: orUnknown(z.number().min(0).max(200_000)),
  waterFeet: orUnknown(feet),
  kitchenFeet: orUnknown(feet),
  truckAccess: orUnknown(z.boolean()),
  rootProtectedShare: orUnknown(share).describe('Share within root protection areas.'),
});

const siteShape = {
  id,
  name: text,
  zone: id,
  boundary: polygonSchema,
  areaSqFt: squareFeet.describe('Stated area. Planning uses the drawn area where they disagree.'),
  areaConfirmed: z
    .boolean()
    .optional()
    .describe('True: the stated area was confirmed and holds against the drawn one.'),
  facts: factsSchema,
  gates: z.array(gateSchema).max(50),
  evidence: z.array(evidenceSchema).max(500),
  trees: z
    .array(treeSchema)
    .max(500)
    .optional()
    .describe('All trees whose roots may reach into the site; an empty list: there are none.'),
  survey: surveySchema.optional(),
  rainTank: rainTankSchema.optional(),
  overrides: measuredList,
};

/** A place being considered. */
export const candidateSiteSchema = z.strictObject({
  ...siteShape,
  buildTypes: z.array(id).min(1).max(50),
  earliest: fiscalYearText.optional().describe('First fiscal year in which it may be prepared.'),
  latest: fiscalYearText.optional().describe('Last fiscal year in which it may be prepared.'),
  costFactor: z
    .number()
    .min(0.1)
    .max(20)
    .describe("Capital cost against the type's own; 1 is usual."),
  phasing: z
    .strictObject({
      mostYearsApart: z.int().min(1).max(4).describe('Most years between the two halves.'),
    })
    .optional()
    .describe('It may be built in two halves. Left out: at once only.'),
  laterChanges: z
    .array(id)
    .max(50)
    .optional()
    .describe('Later changes of the campus that may be made to it. Left out: none.'),
  temporary: z
    .literal(true)
    .optional()
    .describe('A build that sure works will end is accepted. Left out: it is not.'),
  notes: z.array(longText).max(100),
});

/** A site planted before the plan begins. */
export const existingSiteSchema = z.strictObject({
  ...siteShape,
  buildType: id,
  plantedCalendarYear: z
    .int()
    .min(1900)
    .max(2200)
    .describe('Calendar year of the season in which it was planted.'),
});

export const zoneSchema = z.strictObject({ id, name: text, boundary: polygonSchema.optional() });
