import { z } from 'zod';
import { type candidateSiteSchema, type existingSiteSchema } from '../campus-file/sites.js';
import { handPlacementSchema } from '../campus-file/rules.js';
import { id } from '../campus-file/values.js';
import { campusSummaryReply } from './campuses.js';
import { jsonObject, problemSchema } from './common.js';

const basedOn = z
  .int()
  .min(1)
  .max(2_147_483_647)
  .meta({ description: 'Version of the campus that the change began from' });

/** Documented by the campus file's own schema; judged with the whole campus by its reader. */
const site = jsonObject.meta({
  description: 'A candidate or existing site, as the campus file describes it',
});

export const siteParams = z.strictObject({ id: z.uuid(), site: id });

export const siteChangeBody = z
  .strictObject({
    basedOn,
    site: site.nullable().meta({ description: 'The site; null: take it out of the campus' }),
  })
  .meta({ id: 'SiteChange' });

export const siteCheckBody = z.strictObject({ site }).meta({ id: 'SiteToCheck' });

export const siteCheckReply = z
  .strictObject({
    problems: z.array(problemSchema).meta({ description: 'What the change would bring in' }),
    drawnAreaSqFt: z
      .number()
      .nullable()
      .meta({ description: 'Area within the boundary; null: it cannot be measured' }),
  })
  .meta({ id: 'SiteCheck' });

export const handPlacementsBody = z
  .strictObject({
    basedOn,
    handPlacements: z.array(handPlacementSchema.omit({ site: true })).max(60),
  })
  .meta({ id: 'HandPlacements' });

export const partSavedReply = z
  .strictObject({
    campus: campusSummaryReply,
    warnings: z.array(problemSchema),
    before: z.unknown().meta({ description: 'The record as it was: save it again to undo' }),
  })
  .meta({ id: 'PartSaved' });

export type CandidateSite = z.infer<typeof candidateSiteSchema>;
export type ExistingSite = z.infer<typeof existingSiteSchema>;
export type SiteParams = z.infer<typeof siteParams>;
export type SiteChange = z.infer<typeof siteChangeBody>;
export type SiteCheck = z.infer<typeof siteCheckReply>;
export type HandPlacements = z.infer<typeof handPlacementsBody>;
