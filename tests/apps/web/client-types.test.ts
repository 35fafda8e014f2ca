/** The page's client is typed by the description of the api, and cannot drift from it. */
import { afterAll, beforeAll, expect, test } from 'vitest';
import openapiTS, { astToString, type OpenAPI3 } from 'openapi-typescript';
import { testApi } from '../../support/api.js';

let api: Awaited<ReturnType<typeof testApi>>;
beforeAll(async () => {
  api = await testApi();
});
afterAll(() => api.close());

const head =
  '/* Generated from the api by tests/apps/web/client-types.test.ts; update with -u. */\n';

test("the types of the page's client are those that the api describes", async () => {
  const { body } = await api.ask({ url: '/api/openapi.json' });
  const types = astToString(await openapiTS(body as OpenAPI3));
  await expect(head + types).toMatchFileSnapshot('../../../apps/web/client/openapi.data.ts');
});
