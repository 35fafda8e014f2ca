import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { problemReplySchema } from '#contracts/http/common.js';
import { StoreUnavailableError } from '#persistence/store-errors.js';
import { type Ask, testApi } from '../../support/api.js';

let api: Awaited<ReturnType<typeof testApi>>;
beforeAll(async () => {
  const page = mkdtempSync(join(tmpdir(), 'page-'));
  writeFileSync(join(page, 'index.html'), '<!doctype html><title>Campus plan</title>');
  api = await testApi({}, page);
});
afterAll(() => api.close());

const campuses = { method: 'POST', url: '/api/campuses' } as const;
const foreign = 'http://elsewhere.example';

describe('a request that cannot be handled gets a problem reply', () => {
  test.each<[string, number, string, Ask]>([
    ['an unknown address', 404, 'unknown-address', { url: '/api/nothing' }],
    [
      'a method that is not there',
      404,
      'unknown-address',
      { method: 'DELETE', url: '/api/health' },
    ],
    ['a body that is not JSON', 400, 'body-not-json', { ...campuses, text: '{"name":' }],
    ['a body that poisons prototypes', 400, 'body-not-json', { ...campuses, text: poison() }],
    ['a form', 415, 'media-type', { ...campuses, text: 'name=A', headers: form() }],
    ['plain text', 415, 'media-type', { ...campuses, text: 'A', headers: plain() }],
    ['a body over 25 MB', 413, 'body-too-large', { ...campuses, text: hugeBody() }],
    [
      'a page of another site',
      403,
      'foreign-origin',
      { ...campuses, headers: { origin: foreign } },
    ],
    ['a foreign host name', 421, 'foreign-host', { url: '/api/health', headers: { host: 'a.b' } }],
  ])('%s', async (_what, status, code, ask) => {
    const reply = await api.ask(ask);
    expect(reply).toMatchObject({ status, body: { status, code } });
    expect(reply.headers['content-type']).toBe('application/problem+json; charset=utf-8');
    expect(problemReplySchema.parse(reply.body)).toEqual(reply.body);
  });

  test('a store that is away is said to be away, and when to try again', async () => {
    const list = () => Promise.reject(new StoreUnavailableError(new Error('ECONNREFUSED /secret')));
    const away = await testApi({ campuses: { ...api.campuses, list } });
    const reply = await away.ask({ url: '/api/campuses' });
    expect(reply).toMatchObject({ status: 503, body: { code: 'store-unavailable' } });
    expect(reply.headers['retry-after']).toBe('5');
    expect(JSON.stringify(reply.body)).not.toContain('secret');
    await away.close();
  });

  test('an error of ours is logged, and the reply tells nothing of it', async () => {
    const logged = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const list = () => Promise.reject(new Error('secret at line 12'));
    const broken = await testApi({ campuses: { ...api.campuses, list } });
    const reply = await broken.ask({ url: '/api/campuses' });
    expect(reply).toMatchObject({ status: 500, body: { code: 'internal' } });
    expect(JSON.stringify(reply)).not.toMatch(/secret|line 12|\.ts|node_modules/);
    expect(logged).toHaveBeenCalledOnce();
    await broken.close();
  });
});

test('the page is served, with headers that keep other sites out', async () => {
  const page = await api.ask({ url: '/' });
  expect(page).toMatchObject({ status: 200 });
  expect(page.body).toContain('Campus plan');
  expect(page.headers).toMatchObject({
    'content-security-policy': expect.stringContaining("default-src 'self'"),
    'x-content-type-options': 'nosniff',
    'x-frame-options': 'DENY',
    'referrer-policy': 'no-referrer',
  });
  expect(await api.ask({ url: '/../package.json' })).toMatchObject({ status: 404 });
});

test('the page itself may change things', async () => {
  const headers = { host: 'localhost:3000', origin: 'http://localhost:3000' };
  const added = await api.ask({ ...campuses, body: { name: 'TVU' }, headers });
  expect(added.status).toBe(201);
});

function poison(): string {
  return '{"name":"A","__proto__":{"isAdmin":true}}';
}

function form(): Record<string, string> {
  return { 'content-type': 'application/x-www-form-urlencoded' };
}

function plain(): Record<string, string> {
  return { 'content-type': 'text/plain' };
}

function hugeBody(): string {
  return JSON.stringify({ name: 'x'.repeat(25 * 1024 * 1024) });
}
