import { z } from 'zod';
import { campusFileSchema } from './campus-file.schema.js';
import { planFileSchema } from './plan-file.schema.js';

/** JSON Schemas (draft 2020-12) of the files that go in and out, by file name. */
export function jsonSchemas(): Readonly<Record<string, object>> {
  return {
    'campus-file.schema.json': schemaOf(campusFileSchema, 'Campus file'),
    'plan-file.schema.json': schemaOf(planFileSchema, 'Plan file'),
  };
}

function schemaOf(schema: z.ZodType, title: string): object {
  const { $schema, ...rest } = z.toJSONSchema(schema, { io: 'input', target: 'draft-2020-12' });
  return { $schema, title, ...rest };
}
