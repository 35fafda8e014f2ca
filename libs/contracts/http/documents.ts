import { z } from 'zod';

/** A document's file name is its address. */
export const documentParams = z.strictObject({
  id: z.uuid(),
  fileName: z
    .string()
    .regex(/^[a-z][a-z-]{1,40}(-[A-Za-z0-9][A-Za-z0-9._-]{0,59})?\.pdf$/)
    .meta({ example: 'administration-brief.pdf' }),
});

export const documentQuery = z.strictObject({
  paper: z.enum(['letter', 'a4']).default('letter').meta({ description: 'US Letter or A4' }),
});

const listedDocument = z
  .strictObject({
    kind: z.string().meta({ example: 'site-dossier' }),
    site: z.string().nullable().meta({ description: 'Null: of the whole plan' }),
    title: z.string(),
    fileName: z.string().meta({ example: 'site-dossier-TVU-19.pdf' }),
    path: z.string().meta({ description: 'Where it is written on request' }),
  })
  .meta({ id: 'PlanDocumentSummary' });

export const documentListReply = z
  .strictObject({ documents: z.array(listedDocument) })
  .meta({ id: 'PlanDocumentList' });

export type DocumentParams = z.infer<typeof documentParams>;
export type DocumentQuery = z.infer<typeof documentQuery>;
export type DocumentListReply = z.infer<typeof documentListReply>;
