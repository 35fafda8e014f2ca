import { z } from 'zod';
import { jsonObject, problemSchema, timestamp } from './common.js';

const summary = {
  id: z.uuid(),
  name: z.string(),
  version: z.int().min(1).meta({ description: 'Newest version; also the ETag, in quotes' }),
  savedAt: timestamp,
};

export const campusSummaryReply = z.strictObject(summary).meta({ id: 'CampusSummary' });

export const campusListReply = z
  .strictObject({ campuses: z.array(campusSummaryReply) })
  .meta({ id: 'CampusList' });

export const campusReply = z
  .strictObject({ ...summary, file: jsonObject.meta({ description: 'The campus file' }) })
  .meta({ id: 'Campus' });

export const campusSavedReply = z
  .strictObject({ campus: campusSummaryReply, warnings: z.array(problemSchema) })
  .meta({ id: 'CampusSaved' });

export const campusQuery = z.strictObject({
  version: z.coerce.number().int().min(1).max(2_147_483_647).optional(),
});

export type CampusSummaryReply = z.infer<typeof campusSummaryReply>;
export type CampusReply = z.infer<typeof campusReply>;
