import { afterAll, beforeAll, expect, test } from 'vitest';
import { testApi } from '../../support/api.js';

let api: Awaited<ReturnType<typeof testApi>>;
interface Described {
  readonly openapi: string;
  readonly paths: Record<string, Record<string, { responses: Record<string, object> }>>;
  readonly components: { readonly schemas: Record<string, object> };
}
let described: Described;
beforeAll(async () => {
  api = await testApi();
  described = (await api.ask({ url: '/api/openapi.json' })).body;
});
afterAll(() => api.close());

/** Every value of a key, however deep. */
function valuesOf(key: string, within: unknown): unknown[] {
  if (typeof within !== 'object' || within === null) return [];
  return Object.entries(within).flatMap(([name, value]) =>
    name === key ? [value, ...valuesOf(key, value)] : valuesOf(key, value),
  );
}

test('the description is of the version whose words it uses', () => {
  expect(described.openapi).toBe('3.0.3');
  expect(valuesOf('exclusiveMinimum', described)).toContain(true);
  expect(valuesOf('const', described.components)).toEqual([]);
  expect(valuesOf('$defs', described)).toEqual([]);
});

test('every reference leads somewhere', () => {
  const references = valuesOf('$ref', described).filter((value) => typeof value === 'string');
  const known = Object.keys(described.components.schemas).map((id) => `#/components/schemas/${id}`);
  expect(known).toContain('#/components/schemas/CampusFile');
  expect(references.filter((reference) => !known.includes(reference))).toEqual([]);
});

test('every address says how it answers, and that an error is a problem reply', () => {
  const operations = Object.entries(described.paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, { responses }]) => ({ path, method, responses })),
  );
  expect(operations.map(({ path, method }) => `${method} ${path}`).sort()).toEqual([
    'get /api/campuses',
    'get /api/campuses/{id}',
    'get /api/campuses/{id}/decisions',
    'get /api/campuses/{id}/defaults',
    'get /api/campuses/{id}/explanations',
    'get /api/campuses/{id}/exports/{format}',
    'get /api/campuses/{id}/plans',
    'get /api/campuses/{id}/sites/{site}/estimate',
    'get /api/campuses/{id}/solves',
    'get /api/campuses/{id}/suitability',
    'get /api/defaults',
    'get /api/explanations/{id}',
    'get /api/health',
    'get /api/plans/{id}',
    'get /api/plans/{id}/documents',
    'get /api/plans/{id}/documents/{fileName}',
    'get /api/plans/{id}/explanations',
    'get /api/plans/{id}/overview',
    'get /api/solves/{id}',
    'get /api/solves/{id}/events',
    'post /api/campuses',
    'post /api/campuses/{id}/explanations',
    'post /api/campuses/{id}/imports',
    'post /api/campuses/{id}/imports/{token}/apply',
    'post /api/campuses/{id}/sites/{site}/check',
    'post /api/campuses/{id}/solves',
    'post /api/plans/{id}/decisions',
    'post /api/plans/{id}/explanations',
    'post /api/plans/{id}/verify',
    'post /api/solves/{id}/cancel',
    'put /api/campuses/{id}',
    'put /api/campuses/{id}/sites/{site}',
    'put /api/campuses/{id}/sites/{site}/hand-placements',
  ]);
  for (const { path, method, responses } of operations) {
    const [good] = Object.entries(responses).filter(([status]) => status.startsWith('2'));
    expect(good?.[1], `${method} ${path}`).toHaveProperty('content');
    const errors = Object.entries(responses).filter(([status]) => !status.startsWith('2'));
    for (const [, error] of errors) {
      expect(error).toHaveProperty(['content', 'application/problem+json']);
    }
  }
});
