import { afterAll, beforeAll, expect, test } from 'vitest';
import { testApi } from '../../support/api.js';

let api: Awaited<ReturnType<typeof testApi>>;
beforeAll(async () => {
  api = await testApi();
});
afterAll(() => api.close());

const file = { name: 'Tamarack Vale', sites: [] };

test('a campus file is added, listed and read back', async () => {
  const added = await api.ask({ method: 'POST', url: '/api/campuses', body: file });
  const { id } = added.body.campus;
  expect(added).toMatchObject({ status: 201, headers: { etag: '"1"' }, body: { warnings: [] } });
  expect(added.headers['location']).toBe(`/api/campuses/${id}`);
  const list = await api.ask({ url: '/api/campuses' });
  expect(list.body.campuses).toContainEqual(added.body.campus);
  const read = await api.ask({ url: `/api/campuses/${id}` });
  expect(read).toMatchObject({ status: 200, headers: { etag: '"1"' }, body: { version: 1, file } });
});

test('warnings of a file that is saved are told', async () => {
  const added = await api.ask({ method: 'POST', url: '/api/campuses', body: { name: 'odd' } });
  expect(added).toMatchObject({ status: 201, body: { warnings: [{ code: 'NAME-ODD' }] } });
});

test('a file with errors is refused with every problem', async () => {
  const refused = await api.ask({ method: 'POST', url: '/api/campuses', body: { sites: [] } });
  expect(refused).toMatchObject({
    status: 422,
    headers: { 'content-type': 'application/problem+json; charset=utf-8' },
    body: { code: 'campus-refused', problems: [{ code: 'NAME-MISSING', remedy: 'Give it one.' }] },
  });
});

test('a change says which version it is based on', async () => {
  const added = await api.ask({ method: 'POST', url: '/api/campuses', body: file });
  const url = `/api/campuses/${added.body.campus.id}`;
  const put = (ifMatch?: string) => {
    const headers = ifMatch === undefined ? {} : { 'if-match': ifMatch };
    return api.ask({ method: 'PUT', url, body: { ...file, sites: [1] }, headers });
  };
  expect(await put()).toMatchObject({ status: 428, body: { code: 'version-missing' } });
  expect(await put('3')).toMatchObject({ status: 400, body: { code: 'if-match-invalid' } });
  expect(await put('"1"')).toMatchObject({ status: 200, headers: { etag: '"2"' } });
  const late = { code: 'version-conflict', currentVersion: 2 };
  expect(await put('"1"')).toMatchObject({ status: 412, body: late });
  expect((await api.ask({ url: `${url}?version=1` })).body.file).toEqual(file);
  expect((await api.ask({ url })).body.file).toEqual({ ...file, sites: [1] });
});

test('what is not there is said to be not there', async () => {
  const url = '/api/campuses/00000000-0000-4000-8000-000000000000';
  expect(await api.ask({ url })).toMatchObject({ status: 404, body: { code: 'unknown-campus' } });
  const change = { method: 'PUT', url, body: file, headers: { 'if-match': '"1"' } } as const;
  expect(await api.ask(change)).toMatchObject({ status: 404, body: { code: 'unknown-campus' } });
  expect(await api.ask({ url: `${url}/plans` })).toMatchObject({ status: 404 });
  expect(await api.ask({ url: '/api/campuses/14' })).toMatchObject({
    status: 400,
    body: { code: 'request-invalid', problems: [{ field: 'id' }] },
  });
});
