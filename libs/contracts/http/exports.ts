import { z } from 'zod';

export const exportFormats = ['geojson', 'csv', 'xlsx', 'ics', 'bundle'] as const;
export const exportTables = ['sites', 'schedule', 'care-hours', 'ledger', 'dictionary'] as const;

export const exportParams = z.strictObject({ id: z.uuid(), format: z.enum(exportFormats) });

export const exportQuery = z.strictObject({
  plan: z.uuid().optional().meta({
    description: 'Left out: a bundle holds all plans of the newest version, other files none',
  }),
  table: z
    .enum(exportTables)
    .default('sites')
    .meta({ description: 'The one table of a CSV file; a workbook holds all of them' }),
  year: z
    .string()
    .regex(/^FY(19|20)\d\d$/)
    .optional()
    .meta({ description: 'Work year of a calendar; left out: the first year of the plan' }),
  audience: z
    .enum(['campus', 'public'])
    .default('campus')
    .meta({ description: 'public: no lab values, utility detail, notes or names of funds' }),
});

export type ExportFormat = (typeof exportFormats)[number];
export type ExportTable = (typeof exportTables)[number];
export type ExportParams = z.infer<typeof exportParams>;
export type ExportQuery = z.infer<typeof exportQuery>;
