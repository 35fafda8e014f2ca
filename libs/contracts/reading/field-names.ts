import type { z } from 'zod';

/** Names of the fields that a schema admits at a path, for suggestions; empty where there are none. */
export function fieldNames(schema: z.ZodType, path: readonly PropertyKey[]): readonly string[] {
  let here: z.ZodType | undefined = unwrapped(schema);
  for (const key of path) {
    here = here && unwrapped(childOf(here, key));
  }
  return here === undefined ? [] : Object.keys(shapeOf(here));
}

type Shape = Readonly<Record<string, z.ZodType>>;

function shapeOf(schema: z.ZodType): Shape {
  return 'shape' in schema ? (schema.shape as Shape) : {};
}

function childOf(schema: z.ZodType, key: PropertyKey): z.ZodType | undefined {
  if ('element' in schema) return schema.element as z.ZodType;
  return shapeOf(schema)[String(key)];
}

function unwrapped(schema: z.ZodType | undefined): z.ZodType | undefined {
  if (schema === undefined || !('unwrap' in schema) || 'element' in schema) return schema;
  return unwrapped((schema.unwrap as () => z.ZodType)());
}
