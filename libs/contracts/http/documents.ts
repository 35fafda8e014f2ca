import { z } from 'zod';

/** The one document so far; its file name is its address. */
export const documentParams = z.strictObject({
  id: z.uuid(),
  fileName: z.enum(['administration-brief.pdf']),
});
