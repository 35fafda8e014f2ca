import type { INestApplication } from '@nestjs/common';
import { DocumentBuilder, SwaggerModule, type OpenAPIObject } from '@nestjs/swagger';
import { z } from 'zod';
import { problemReplySchema, problemSchema } from '#contracts/http/common.js';

/**
 * The description of the api. Version 3.0.3, since the schemas come out with `exclusiveMinimum: true`,
 * which later versions of OpenAPI do not allow.
 */
export function openApiOf(app: INestApplication): OpenAPIObject {
  const about = new DocumentBuilder()
    .setTitle('Campus plan')
    .setDescription('Campuses, solves, verified plans and their documents. A planning aid.')
    .setVersion('1')
    .setOpenAPIVersion('3.0.3')
    .build();
  const document = SwaggerModule.createDocument(app, about);
  const schemas = { ...document.components?.schemas, ...problemSchemas() };
  return { ...document, components: { ...document.components, schemas } };
}

type Schemas = NonNullable<NonNullable<OpenAPIObject['components']>['schemas']>;

/** The problem replies are named by reference only, so their schemas have to be added. */
function problemSchemas(): Schemas {
  const named = z.registry<{ id: string }>();
  named.add(problemSchema, { id: 'Problem' }).add(problemReplySchema, { id: 'ProblemReply' });
  const uri = (id: string): string => `#/components/schemas/${id}`;
  const { schemas } = z.toJSONSchema(named, { target: 'openapi-3.0', uri });
  return Object.fromEntries(Object.entries(schemas).map(([id, schema]) => [id, bare(schema)]));
}

/** OpenAPI gives a schema neither an address nor a dialect of its own. */
function bare(schema: object): Schemas[string] {
  const { $id: _id, $schema: _schema, ...rest } = schema as Record<string, unknown>;
  return rest;
}
