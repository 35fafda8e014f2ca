import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { jsonSchemas } from '#contracts/json-schema.js';

const FOLDER = 'libs/contracts/schema';
const schemas = Object.entries(jsonSchemas());

const json = (path: string): unknown => JSON.parse(readFileSync(path, 'utf8'));
const validate = new Ajv2020({ allErrors: true }).compile(
  json(`${FOLDER}/campus-file.schema.json`) as object,
);

describe('The published JSON Schemas', () => {
  test.each(schemas)(
    '%s is the one that the zod schema gives (UPDATE=1 writes it)',
    (name, schema) => {
      const text = `${JSON.stringify(schema, null, 2)}\n`;
      if (process.env.UPDATE === '1') writeFileSync(`${FOLDER}/${name}`, text);
      expect(readFileSync(`${FOLDER}/${name}`, 'utf8')).toBe(text);
    },
  );

  const demos = readdirSync('seeds').filter((file) => file.startsWith('demo-'));

  test('there are three demo campuses to hold against them', () => {
    expect(demos).toHaveLength(3);
  });

  test.each([...demos, 'mistakes/base.json'])('accept %s, by an independent validator', (file) => {
    validate(json(`seeds/${file}`));
    expect(validate.errors ?? []).toEqual([]);
  });

  test.each([
    'a-ph-is-off-the-scale',
    'a-bare-year-is-given-for-a-fiscal-year',
    'a-position-has-no-lead-time',
    'a-field-name-is-misspelled',
    'a-promise-is-only-soon',
    'a-distance-is-the-word-near',
    'a-plan-is-given-for-a-campus',
  ])('refuse a mistake of form: %s', (name) => {
    expect(validate(json(`seeds/mistakes/${name}.json`))).toBe(false);
  });
});
